/** German of the panels: schedule. */
export const PANELS_SCHEDULE = {
  'a first look, being computed': 'ein erster Blick, wird berechnet',
  'ATTENDED HOURS': 'BESETZTE STUNDEN',
  'being computed': 'wird berechnet',
  build: 'Baujob',
  CORRECTION: 'KORREKTUR',
  'correction factor': 'Korrekturfaktor',
  'Cut the plan at this layer': 'Draufsicht bei dieser Schicht schneiden',
  'Estimates from planned hours and the correction; stops for service, heating and cooling are not in them. Each store is taken to be served in full at its event. A range of attended hours is over at its last minute; a change of summer time is not counted.':
    'Schätzungen aus geplanten Stunden und Korrektur; Halte für Wartung, Aufheizen und Abkühlen sind nicht enthalten. Jeder Vorrat gilt bei seinem Ereignis als ganz gewartet. Ein Bereich besetzter Stunden endet mit seiner letzten Minute; die Umstellung auf Sommerzeit zählt nicht.',
  EVENTS: 'EREIGNISSE',
  Friday: 'Freitag',
  'in the feed': 'im Vorrat',
  'in the overflow': 'im Überlauf',
  'learned correction': 'gelernte Korrektur',
  Monday: 'Montag',
  'more than it holds ({holds} l)': 'mehr als er fasst ({holds} l)',
  'Next attended start that puts every service and the end into attended hours (by the estimated hours; their ± is not respected):':
    'Nächster besetzter Start, der jede Wartung und das Ende in besetzte Stunden legt (nach den geschätzten Stunden; ihr ± ist nicht berücksichtigt):',
  'Next attended start that puts every service into attended hours, though not the end (by the estimated hours; their ± is not respected):':
    'Nächster besetzter Start, der jede Wartung in besetzte Stunden legt, doch nicht das Ende (nach den geschätzten Stunden; ihr ± ist nicht berücksichtigt):',
  'No attended start within 14 days puts every service into attended hours (by the estimated hours; their ± is not respected).':
    'Kein besetzter Start innerhalb von 14 Tagen legt jede Wartung in besetzte Stunden (nach den geschätzten Stunden; ihr ± ist nicht berücksichtigt).',
  'No build is recorded yet. Records stay in this browser, not in the layout.':
    'Noch ist kein Baujob eingetragen. Einträge bleiben in diesem Browser, nicht im Layout.',
  '{count} [record|records] of other machines or processes [is|are] not counted here.':
    '{count} [Eintrag|Einträge] von anderen Maschinen oder Prozessen [zählt|zählen] hier nicht.',
  'No parts, no events.': 'Keine Teile, keine Ereignisse.',
  'nobody there': 'niemand da',
  'Nothing is known yet of when this build starts. With a start and attended hours, overflow, feed, residue and end are listed by clock time, and what happens while nobody is there becomes a fault.':
    'Noch ist nicht bekannt, wann dieser Baujob startet. Mit Start und besetzten Stunden stehen Überlauf, Vorrat, Rückstände und Ende mit Uhrzeit hier, und was geschieht, während niemand da ist, wird zum Fehler.',
  'of the plate before, being computed': 'der vorigen Platte, wird berechnet',
  'Planned before any correction, real without stops.': 'Soll vor jeder Korrektur, Ist ohne Stopps.',
  'planned h': 'Soll h',
  'planned hours': 'Soll-Stunden',
  'Ranges such as 06:00-22:00, 23:00-24:00; over midnight is two. Empty: nobody comes.':
    'Bereiche wie 06:00-22:00, 23:00-24:00; über Mitternacht sind es zwei. Leer: niemand kommt.',
  ratio: 'Verhältnis',
  'real / planned hours': 'Ist / Soll',
  'real h': 'Ist h',
  'real hours': 'Ist-Stunden',
  'Record this build': 'Baujob eintragen',
  remove: 'entfernen',
  'Remove the record of {name}': 'Eintrag {name} entfernen',
  Saturday: 'Samstag',
  'since cleaning': 'seit der Reinigung',
  'spread (one σ)': 'Streuung (ein σ)',
  'spread of the correction': 'Streuung der Korrektur',
  'spread unknown: one build has none, so the given one stays.':
    'Streuung unbekannt: ein Baujob hat keine, darum bleibt die angegebene.',
  'spread {spread} of it (root mean square of the ratios about it, n − 1).':
    'Streuung {spread} davon (quadratisches Mittel der Verhältnisse darum, n − 1).',
  START: 'START',
  'start of the build': 'Start des Baujobs',
  'start of the build, local time': 'Start des Baujobs, Ortszeit',
  'STORES AT THE START': 'VORRÄTE BEIM START',
  Sunday: 'Sonntag',
  'Take over': 'Übernehmen',
  'The machine’s powder stores are not stated (Machine): only the end is listed.':
    'Die Pulvervorräte der Maschine sind nicht angegeben (Maschine): nur das Ende steht hier.',
  Thursday: 'Donnerstag',
  Tuesday: 'Dienstag',
  Wednesday: 'Mittwoch',
  '{count} more events before the end are not written out.':
    '{count} weitere Ereignisse vor dem Ende sind nicht ausgeschrieben.',
  'Σ real / Σ planned = {factor},': 'Σ Ist / Σ Soll = {factor},',
};
