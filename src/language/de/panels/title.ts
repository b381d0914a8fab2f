/** German of the panels: title. */
export const PANELS_TITLE = {
  'A plan and an estimate, unvalidated by measurement for several lasers. The machine maker’s instructions, site rules, local law and trained people decide. Hatching shows who exposes, not the scan direction.':
    'Ein Plan und eine Schätzung, für mehrere Laser durch keine Messung bestätigt. Es entscheiden die Anweisungen des Maschinenherstellers, die Regeln des Betriebs, das geltende Recht und geschulte Personen. Die Schraffur zeigt, wer belichtet, nicht die Scanrichtung.',
  'being checked': 'wird geprüft',
  'blocks hand-over': 'hindert Übergabe',
  'build, corrected': 'Baujob, korrigiert',
  'draft, not released': 'Entwurf, nicht freigegeben',
  'empty plate': 'leere Platte',
  nobody: 'niemand',
  'none ¦ note': 'keine',
  note: 'Notiz',
  program: 'Programm',
  'reviewed, not released': 'geprüft, nicht freigegeben',
  'revision {name} is superseded': 'Revision {name} ist ersetzt',
  'the plate is empty': 'die Platte ist leer',
  'the plate is still being checked': 'die Platte wird noch geprüft',
  'Title block': 'Schriftfeld',
  'unassigned area blocks hand-over': 'nicht zugewiesene Fläche hindert die Übergabe',
  units: 'Einheiten',
  '{count} [fault blocks|faults block] hand-over': '{count} [Fehler hindert|Fehler hindern] die Übergabe',
  '{hours}, before the edit': '{hours}, vor der Änderung',
  '{hours}, some layers': '{hours}, einige Schichten',
  '{name}, recorded as typed; a page cannot prove identity':
    '{name}, festgehalten wie getippt; eine Seite kann keine Person nachweisen',
  '{reviewer}, the author': '{reviewer}, der Verfasser',
};
