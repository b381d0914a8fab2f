/** German of messages: sound. */
export const MESSAGES_SOUND = {
  'Do not use the figures of this layer. Keep the layout file: it shows the fault again.':
    'Die Werte dieser Schicht nicht verwenden. Die Layoutdatei aufheben: sie zeigt den Fehler wieder.',
  'The books do not balance here: a piece of {part} and its outline differ by {by} mm².':
    'Die Bilanz geht hier nicht auf: ein Stück von {part} und sein Umriss unterscheiden sich um {by} mm².',
  'The books do not balance here: pieces of {part} overlap by {by} mm².':
    'Die Bilanz geht hier nicht auf: Stücke von {part} überlappen sich um {by} mm².',
  'The books do not balance here: regions of the division overlap or leave the platform by {by} mm².':
    'Die Bilanz geht hier nicht auf: Gebiete der Aufteilung überlappen sich oder verlassen die Bauplattform um {by} mm².',
  'The books do not balance here: scan areas − double exposure + unassigned miss the section by {by} mm².':
    'Die Bilanz geht hier nicht auf: Scanflächen − Doppelbelichtung + nicht Zugewiesenes verfehlen den Schnitt um {by} mm².',
  'The books do not balance here: solved again, the planned exposure differs by {by} s.':
    'Die Bilanz geht hier nicht auf: noch einmal gelöst weicht die geplante Belichtung um {by} s ab.',
  'The books do not balance here: the layer is {by} s faster than the best possible.':
    'Die Bilanz geht hier nicht auf: die Schicht ist {by} s schneller als bestmöglich.',
  'The books do not balance here: the pieces of {part} and its section differ by {by} mm².':
    'Die Bilanz geht hier nicht auf: die Stücke von {part} und sein Schnitt unterscheiden sich um {by} mm².',
  'The books do not balance here: the plan of the layer does not hold ({detail}).':
    'Die Bilanz geht hier nicht auf: der Plan der Schicht hält nicht ({detail}).',
  'The books do not balance here: the {figure} of the layer is off by {by}.':
    'Die Bilanz geht hier nicht auf: {figure} der Schicht, Abweichung {by}.',
  'The books do not balance here: the {figure} of {laser} is off by {by}.':
    'Die Bilanz geht hier nicht auf: {figure} von {laser}, Abweichung {by}.',
  'The books do not balance here: {laser} exposes {by} mm² of {part} outside its zone or its reach.':
    'Die Bilanz geht hier nicht auf: {laser} belichtet {by} mm² von {part} außerhalb seiner Zone oder Reichweite.',
  'The books do not balance here: {laser} is off and exposes a piece of {part}.':
    'Die Bilanz geht hier nicht auf: {laser} ist aus und belichtet ein Stück von {part}.',
};
