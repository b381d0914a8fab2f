/** German of what the first paint shows: plan, readout, title. All else stands in rest.ts and comes after it. */
export const FIRST = {
  Plan: 'Draufsicht',
  'A part of Evenplate could not be loaded. Your work is still saved; load the page again.':
    'Ein Teil von Evenplate konnte nicht geladen werden. Die Arbeit ist gespeichert; bitte die Seite neu laden.',
};
