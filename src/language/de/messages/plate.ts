/** German of messages: plate. */
export const MESSAGES_PLATE = {
  'A {length} mm side of {parts} meets the blade {angle}° from parallel to it, between z {from} and {to} mm.':
    'Eine {length} mm lange Seite von {parts} liegt {angle}° neben der Parallelen zur Klinge, zwischen z {from} und {to} mm.',
  'All lasers are off.': 'Alle Laser sind aus.',
  'An outline of the shape {shape} crosses itself and was repaired by the even-odd rule.':
    'Ein Umriss der Form {shape} schneidet sich selbst und wurde nach der Gerade-Ungerade-Regel repariert.',
  'Compare its area with the drawing and correct the outline there.':
    'Seine Fläche mit der Zeichnung vergleichen und den Umriss dort berichtigen.',
  'It is counted as full before layer 1: correct the fill level, or the overflow of the machine.':
    'Er zählt vor Schicht 1 als voll: den Füllstand oder den Überlauf der Maschine berichtigen.',
  'It is counted as full: correct the fill level, or the feed of the machine.':
    'Er zählt als voll: den Füllstand oder den Vorrat der Maschine berichtigen.',
  'Keep parts {margin} mm away from the edges of the platform.':
    'Teile {margin} mm von den Kanten der Bauplattform fernhalten.',
  'Keep parts {spacing} mm apart (a setting of the layout).':
    'Teile {spacing} mm auseinander halten (eine Einstellung des Layouts).',
  'Layer {layer} alone takes {each} {unit}, more than the {store} of {capacity} {unit}.':
    'Schicht {layer} allein nimmt {each} {unit}, mehr als {capacity} {unit} ({store}).',
  'Load the page again; the work is saved.': 'Die Seite neu laden; die Arbeit ist gespeichert.',
  'The sections of {shape} were cut for layers of {cut} mm; the process lays {layer} mm.':
    'Die Schnitte von {shape} gelten für Schichten von {cut} mm; der Prozess legt {layer} mm.',
  'Open its mesh again, so that every layer is cut at its middle.':
    'Sein Netz neu öffnen, damit jede Schicht in ihrer Mitte geschnitten wird.',
  'Move it inside the platform outline.': 'In den Umriss der Bauplattform schieben.',
  'Move it into one zone, widen a zone or the shared band, divide all its heights alike, or allow seams.':
    'In eine Zone schieben, eine Zone oder das gemeinsame Band verbreitern, alle Höhen gleich aufteilen oder Nähte erlauben.',
  'Move it into the reach of a laser, or switch on the laser that reaches it.':
    'In die Reichweite eines Lasers schieben oder den Laser einschalten, der es erreicht.',
  'Move it off the keep-out.': 'Von der Sperrfläche schieben.',
  'Move one of them; no part may stand under or over another.':
    'Eines davon verschieben; kein Teil darf unter oder über einem anderen stehen.',
  'Move one of them; parts may not share a place at any height.':
    'Eines davon verschieben; Teile dürfen sich in keiner Höhe einen Ort teilen.',
  'Move the part into a zone, widen the zone or its reach, or switch its laser on.':
    'Das Teil in eine Zone schieben, Zone oder Reichweite vergrößern oder den Laser einschalten.',
  'Move the part into the reach of {laser}, or free it.':
    'Das Teil in die Reichweite von {laser} schieben oder freigeben.',
  'No attended start within 14 days avoids it: attend that hour, or change fill levels or plate. Never skip a service.':
    'Kein besetzter Beginn in den nächsten 14 Tagen vermeidet es: diese Stunde besetzen oder Füllstände oder Platte ändern. Nie einen Service auslassen.',
  'No attended start within 14 days brings all into attended hours. The build waits, hot and under gas.':
    'Kein besetzter Beginn in den nächsten 14 Tagen bringt alles in besetzte Zeit. Der Baujob wartet, heiß und unter Gas.',
  'No laser that is on reaches {area} mm² of {part}.':
    'Kein eingeschalteter Laser erreicht {area} mm² von {part}.',
  'No turn in steps of 5° avoids sides over {limit} mm. Geometry alone; the maker’s instructions decide.':
    'Keine Drehung in Schritten von 5° vermeidet Seiten über {limit} mm. Nur Geometrie; die Anweisungen des Herstellers entscheiden.',
  'Only the first are listed; correct the figures of the powder stores.':
    'Nur die ersten sind aufgeführt; die Angaben der Pulverbehälter berichtigen.',
  'Raise the dose factor of the process to {factor} or more, or spread the sections over the height.':
    'Den Dosisfaktor des Prozesses auf {factor} oder mehr heben oder die Schnitte über die Höhe verteilen.',
  'Spread the parts, or lower the spacing of the layout, until every pair can be compared.':
    'Die Teile verteilen oder den Abstand des Layouts senken, bis jedes Paar verglichen werden kann.',
  'Start at {start}: every service and the end then fall into attended hours. Else it waits, hot and under gas.':
    'Am {start} beginnen: jeder Service und das Ende fallen dann in besetzte Zeit. Sonst wartet er, heiß und unter Gas.',
  'Start at {start}: every service and the end then fall into attended hours. Never skip a service.':
    'Am {start} beginnen: jeder Service und das Ende fallen dann in besetzte Zeit. Nie einen Service auslassen.',
  'Start at {start}: every service then falls into attended hours, the end does not. Never skip a service.':
    'Am {start} beginnen: jeder Service fällt dann in besetzte Zeit, das Ende nicht. Nie einen Service auslassen.',
  'Switch at least one laser on.': 'Mindestens einen Laser einschalten.',
  'Switch {laser} on or free the part.': '{laser} einschalten oder das Teil freigeben.',
  'The build cannot pass this layer: correct the figure of the machine, or lower the dose.':
    'Der Baujob kommt über diese Schicht nicht hinaus: die Angabe der Maschine berichtigen oder die Dosis senken.',
  'The build ends with layer {layer}, {at}, when nobody attends the machine.':
    'Der Baujob endet mit Schicht {layer}, {at}, wenn die Maschine unbesetzt ist.',
  'The figures of the whole height could not be computed: {detail}':
    'Die Werte der ganzen Höhe konnten nicht berechnet werden: {detail}',
  'The layer that is shown is right. Change the plate or load the page again; the work is saved.':
    'Die gezeigte Schicht stimmt. Die Platte ändern oder die Seite neu laden; die Arbeit ist gespeichert.',
  'The machine builds up to {limit} mm; lay the part down or divide it.':
    'Die Maschine baut bis {limit} mm; das Teil hinlegen oder aufteilen.',
  'The part of Evenplate that finds problems could not be loaded, so nobody has looked for any.':
    'Der Teil von Evenplate, der Probleme findet, konnte nicht geladen werden, niemand hat also nach welchen gesucht.',
  'The schedule fills the feed with {found} l, more than it holds ({capacity} l).':
    'Der Zeitplan füllt den Vorrat mit {found} l, mehr als er fasst ({capacity} l).',
  'The schedule starts with {found} l in the overflow, more than it holds ({capacity} l).':
    'Der Zeitplan beginnt mit {found} l im Überlauf, mehr als er fasst ({capacity} l).',
  'Turned by {turn}°, no side over {limit} mm does. Geometry alone; the maker’s instructions decide.':
    'Um {turn}° gedreht tut das keine Seite über {limit} mm. Nur Geometrie; die Anweisungen des Herstellers entscheiden.',
  'Up to {area} mm² of a section of {part} is exposed by no laser.':
    'Bis zu {area} mm² eines Schnitts von {part} belichtet kein Laser.',
  '{event}: layer {layer} is the last that can finish, {at}, when nobody attends the machine.':
    '{event}: Schicht {layer} ist die letzte, die fertig wird, {at}, wenn die Maschine unbesetzt ist.',
  '{event}: more than {most} times in this build.': '{event}: mehr als {most}-mal in diesem Baujob.',
  '{laser}, to which {part} is pinned, does not reach {area} mm² of it.':
    '{laser}, dem {part} fest zugewiesen ist, erreicht {area} mm² davon nicht.',
  '{layers} layers, from layer {from} on, need up to {short} cm³ more powder than their dose.':
    '{layers} Schichten ab Schicht {from} brauchen bis zu {short} cm³ mehr Pulver als ihre Dosis.',
  '{listed} pairs of parts that overlap or stand too close are listed; {left} more come near and were not compared.':
    '{listed} Paare von Teilen, die sich überlappen oder zu nah stehen, sind aufgeführt; {left} weitere kommen sich nah und wurden nicht verglichen.',
  '{part} and {other} overlap by {area} mm² seen from above, their sections between z {from} and {to} mm.':
    '{part} und {other} überlappen sich von oben gesehen um {area} mm², ihre Schnitte zwischen z {from} und {to} mm.',
  '{part} and {other} overlap by {area} mm² seen from above, though at no height their sections do.':
    '{part} und {other} überlappen sich von oben gesehen um {area} mm², ihre Schnitte aber in keiner Höhe.',
  '{part} and {other} stand {gap} mm apart.': '{part} und {other} stehen {gap} mm auseinander.',
  '{part} covers {area} mm² of a keep-out.': '{part} bedeckt {area} mm² einer Sperrfläche.',
  '{part} is pinned to {laser}, which is off.': '{part} ist {laser} fest zugewiesen, der aus ist.',
  '{part} is {height} mm high.': '{part} ist {height} mm hoch.',
  '{part} reaches {by} mm into the margin of the platform.':
    '{part} reicht {by} mm in den Rand der Bauplattform.',
  '{part} should stay with one laser, but no zone holds it whole over its height: it is cut along the zones, or changes its laser where they change.':
    '{part} soll bei einem Laser bleiben, aber keine Zone hält es über seine Höhe ganz: es wird an den Zonen geschnitten oder wechselt seinen Laser, wo sie wechseln.',
  '{part} stands off the platform by {area} mm².':
    '{part} steht mit {area} mm² über die Bauplattform hinaus.',
};
