/** German of the panels: schedule. */
export const PANELS_SCHEDULE = {
  'ATTENDED HOURS': 'BESETZTE STUNDEN',
  build: 'Baujob',
  CORRECTION: 'KORREKTUR',
  'Cut the plan at this layer': 'Draufsicht bei dieser Schicht schneiden',
  'Estimates from planned hours and the correction; stops for service, heating and cooling are not in them. Each store is taken to be served in full at its event. A range of attended hours is over at its last minute; a change of summer time is not counted.':
    'Schätzungen aus geplanten Stunden und Korrektur; Halte für Wartung, Aufheizen und Abkühlen sind nicht enthalten. Jeder Vorrat gilt bei seinem Ereignis als ganz gewartet. Ein Bereich besetzter Stunden endet mit seiner letzten Minute; die Umstellung auf Sommerzeit zählt nicht.',
  EVENTS: 'EREIGNISSE',
  'No build is recorded yet. Records stay in this browser, not in the layout.':
    'Noch ist kein Baujob eingetragen. Einträge bleiben in diesem Browser, nicht im Layout.',
  'Nothing is known yet of when this build starts. With a start and attended hours, overflow, feed, residue and end are listed by clock time, and what happens while nobody is there becomes a fault.':
    'Noch ist nicht bekannt, wann dieser Baujob startet. Mit Start und besetzten Stunden stehen Überlauf, Vorrat, Rückstände und Ende mit Uhrzeit hier, und was geschieht, während niemand da ist, wird zum Fehler.',
  'Planned before any correction, real without stops.': 'Geplant vor jeder Korrektur, wirklich ohne Halte.',
  'planned h': 'geplant h',
  'planned hours': 'geplante Stunden',
  'Ranges such as 06:00-22:00, 23:00-24:00; over midnight is two. Empty: nobody comes.':
    'Bereiche wie 06:00-22:00, 23:00-24:00; über Mitternacht sind es zwei. Leer: niemand kommt.',
  ratio: 'Verhältnis',
  'real / planned hours': 'wirkliche / geplante Stunden',
  'real h': 'wirklich h',
  'real hours': 'wirkliche Stunden',
  'Record this build': 'Baujob eintragen',
  remove: 'entfernen',
  'spread (one σ)': 'Streuung (ein σ)',
  START: 'START',
  'STORES AT THE START': 'VORRÄTE BEIM START',
  'Take over': 'Übernehmen',
  'The machine’s powder stores are not stated (Machine): only the end is listed.':
    'Die Pulvervorräte der Maschine sind nicht angegeben (Maschine): nur das Ende steht hier.',
};
