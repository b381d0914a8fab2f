/** German of cautions, events and other words of the engine. */
export const ENGINE = {
  'A plan and an estimate. The machine maker’s instructions, site rules, local law and trained people decide. A service event in unattended hours is a fault to resolve, never to skip.':
    'Ein Plan und eine Schätzung. Es entscheiden die Anweisungen des Maschinenherstellers, die Regeln des Betriebs, das geltende Recht und geschulte Personen. Eine Wartung in unbesetzten Stunden ist ein Fehler, der behoben und nie übergangen wird.',
  'Condensate and filter residue of reactive alloys can ignite in air hours later. Inert gas displaces oxygen.':
    'Kondensat und Filterrückstände reaktiver Legierungen können sich an Luft noch Stunden später entzünden. Schutzgas verdrängt Sauerstoff.',
  'End of the build': 'Ende des Baujobs',
  'Feed empty': 'Vorrat leer',
  'Fine metal powder is handled. Inert gas displaces oxygen; platform and parts stay hot.':
    'Feines Metallpulver wird gehandhabt. Schutzgas verdrängt Sauerstoff; Bauplattform und Teile bleiben heiß.',
  'Inert gas displaces oxygen; platform and parts stay hot.':
    'Schutzgas verdrängt Sauerstoff; Bauplattform und Teile bleiben heiß.',
  'Overflow full': 'Überlauf voll',
  'Residue due': 'Rückstände fällig',
};
