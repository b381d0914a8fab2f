/** German of messages: export. */
export const MESSAGES_EXPORT = {
  'No file was made. Hand the places over as the table of parts, or as DXF.':
    'Keine Datei entstand. Die Orte als Tabelle der Teile oder als DXF übergeben.',
  'The bodies of this plate have more than {limit} triangles.':
    'Die Körper dieser Platte haben mehr als {limit} Dreiecke.',
  'The file could not be made: {detail}': 'Die Datei konnte nicht erzeugt werden: {detail}',
  'The plate is as it was. Try again, or save the layout and reload the page.':
    'Die Platte ist, wie sie war. Noch einmal versuchen oder das Layout speichern und die Seite neu laden.',
};
