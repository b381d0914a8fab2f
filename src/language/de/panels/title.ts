/** German of the panels: title. */
export const PANELS_TITLE = {
  'A plan and an estimate, unvalidated by measurement for several lasers. The machine maker’s instructions, site rules, local law and trained people decide. Hatching shows who exposes, not the scan direction.':
    'Ein Plan und eine Schätzung, für mehrere Laser durch keine Messung bestätigt. Es entscheiden die Anweisungen des Maschinenherstellers, die Regeln des Betriebs, das geltende Recht und geschulte Personen. Die Schraffur zeigt, wer belichtet, nicht die Scanrichtung.',
  note: 'Notiz',
  program: 'Programm',
  'Title block': 'Schriftfeld',
  units: 'Einheiten',
};
