/** German of the commands: schedule. */
export const COMMANDS_SCHEDULE = {
  'a start is planned already': 'ein Start ist schon geplant',
  'Drop the schedule': 'Zeitplan verwerfen',
  'no start is planned': 'kein Start ist geplant',
  'Plan the start of the build': 'Start des Baujobs planen',
};
