/** German of the panels: readout, from “Add a strip in Division ” to “nothing to expose: 0”. */
export const PANELS_READOUT1 = {
  'Add a strip in Division and choose its laser there.':
    'Unter Aufteilung einen Streifen hinzufügen und dort seinen Laser wählen.',
  'All loads of all lasers added up; filter and residue count in these, not in clock hours.':
    'Alle Lasten aller Laser summiert; Filter und Rückstände zählen danach, nicht nach der Uhr.',
  'All parts cut at this height, holes left out.': 'Alle auf dieser Höhe geschnittenen Teile, ohne Löcher.',
  'All seams of the layer end to end.': 'Alle Nähte der Schicht aneinandergelegt.',
  'Best possible exposure': 'Bestmögliche Belichtung',
  'Book-keeping': 'Buchführung',
  'Borders inside one part between two lasers, each connected segment once.':
    'Grenzen innerhalb eines Teils zwischen zwei Lasern, jedes zusammenhängende Stück einmal.',
  'Both neighbours expose the seam overlap.': 'Beide Nachbarn belichten die Nahtüberlappung.',
  'Both ways': 'Beide Richtungen',
  'both ways, {bothWays} a layer: {timeBothWays}': 'beide Richtungen, {bothWays} je Schicht: {timeBothWays}',
  Build: 'Baujob',
  BUILD: 'BAUJOB',
  'Build time': 'Bauzeit',
  'Build time (estimate)': 'Bauzeit (Schätzung)',
  'Build time one way and both ways (estimate)': 'Bauzeit in einer und in beiden Richtungen (Schätzung)',
  'build time · factor ± spread': 'Bauzeit · Faktor ± Streuung',
  'build time, h': 'Bauzeit, h',
  'by geometry': 'geom.',
  'Connected regions of one part that this laser exposes, adjacent cells merged.':
    'Zusammenhängende Gebiete eines Teils, die dieser Laser belichtet, Nachbarzellen vereinigt.',
  'contours·P/v_c = {contours} · {outline} / {contourSpeed} mm/s':
    'Konturen·P/v_c = {contours} · {outline} / {contourSpeed} mm/s',
  Corrected: 'Korrigiert',
  'Corrected build time (estimate)': 'Korrigierte Bauzeit (Schätzung)',
  'count of (part, laser pair, segment)': 'Anzahl von (Teil, Laserpaar, Segment)',
  'count of parts exposed by more than one laser': 'Anzahl der Teile, die mehr als ein Laser belichtet',
  'count of parts that two lasers or more hold whole': 'Zahl der Teile, die zwei oder mehr Laser ganz halten',
  'count over the layer': 'Anzahl über die Schicht',
  'crossings of seam and outline; several at one point are one':
    'Kreuzungen von Naht und Umriss; mehrere in einem Punkt sind eine',
  'Double exposure': 'Doppelbelichtung',
  'E = A/(h·v) + t_v·n + contours·P/v_c + t_p, summed over its pieces':
    'E = A/(h·v) + t_v·n + Konturen·P/v_c + t_p, summiert über seine Stücke',
  'estimates {left}, {left2}': 'Schätzungen {left}, {left2}',
  'every laser is off': 'alle Laser sind aus',
  'Every laser is off: nothing is exposed, and no time can be the best.':
    'Alle Laser sind aus: nichts wird belichtet, und keine Zeit kann die beste sein.',
  'Every layer’s time added up. Service stops, heating and cooling are not in it.':
    'Die Zeiten aller Schichten summiert. Wartungshalte, Aufheizen und Abkühlen sind nicht enthalten.',
  'exposes nothing in this layer': 'belichtet nichts in dieser Schicht',
  Exposure: 'Belichtung',
  'Exposure of the build (estimate)': 'Belichtung des Baujobs (Schätzung)',
  'Exposure of the layer': 'Belichtung der Schicht',
  'exposure of the layer − own load': 'Belichtung der Schicht − eigene Last',
  'exposure − best possible': 'Belichtung − bestmöglich',
  'exposure, h': 'Belichtung, h',
  'foot at {x}, {y} mm': 'Fußpunkt bei {x}; {y} mm',
  'Four quadrants serve four lasers: change one’s laser in Division, or take strips (W, E).':
    'Vier Quadranten bedienen vier Laser: den Laser eines Quadranten unter Aufteilung ändern oder Streifen nehmen (W, E).',
  'from a part of the layers; computing{far}': 'aus einem Teil der Schichten; rechnet{far}',
  'From the sums over all layers: equal totals can hide layers that are far from even.':
    'Aus den Summen über alle Schichten: gleiche Summen können Schichten verbergen, die weit auseinander liegen.',
  'Geometry only, not a flow simulation: mean number of other lasers’ plumes over this beam. No published plume width was found; the half-width is a setting.':
    'Reine Geometrie, keine Strömungssimulation: mittlere Zahl der Rauchfahnen anderer Laser über diesem Strahl. Eine veröffentlichte Breite wurde nicht gefunden; die halbe Breite ist eine Einstellung.',
  'half-width of the strip {plumeHalfWidth} mm, flow towards {towards}°':
    'halbe Breite des Streifens {plumeHalfWidth} mm, Strömung nach {towards}°',
  'Held by minimum': 'Am Minimum',
  'Held by the minimum layer time (estimate)': 'Von der Mindest-Schichtzeit gehalten (Schätzung)',
  'held, h': 'gehalten, h',
  'Hours in which every laser is done and the layer waits. Balancing does not shorten them.':
    'Stunden, in denen jeder Laser fertig ist und die Schicht wartet. Ausgleichen verkürzt sie nicht.',
  'How much longer the slowest laser works than the mean of all lasers that are on.':
    'Wie viel länger der langsamste Laser arbeitet als das Mittel aller eingeschalteten Laser.',
  'How slantwise the beam strikes what this laser exposes in the layer; the spot grows longer by it.':
    'Wie schräg der Strahl trifft, was dieser Laser in der Schicht belichtet; der Fleck wird dadurch länger.',
  'Idle laser-hours': 'Leerlauf-Std.',
  'Idle laser-hours (estimate)': 'Leerlauf in Laserstunden (Schätzung)',
  'Idle of {id}': 'Leerlauf von {id}',
  'idle, h': 'Leerlauf, h',
  Imbalance: 'Ungleichgewicht',
  'Imbalance by area': 'Ungleichgewicht nach Fläche',
  'Imbalance of the build': 'Ungleichgewicht des Baujobs',
  'Incidence of {id}': 'Einfall von {id}',
  'it counts no seam of a cut that is still open, and gaps per piece only where they cannot be avoided':
    'sie zählt keine Naht eines noch offenen Schnitts, und Pausen je Stück nur, wo sie unvermeidlich sind',
  'largest in {id}: {angle} = {angle2}, spot {spot} × as long':
    'am größten in {id}: {angle} = {angle2}, Fleck {spot} × so lang',
  'Laser-hours': 'Laserstunden',
  'Laser-hours (estimate)': 'Laserstunden (Schätzung)',
  'laser-hours, h': 'Laserstunden, h',
  'lasers of whole parts: a good choice, not proven to be the best':
    'Laser der ganzen Teile: eine gute Wahl, nicht als beste bewiesen',
  'Layer time': 'Schichtzeit',
  'Load of {id}': 'Last von {id}',
  'load, s': 'Last, s',
  'max / mean − 1': 'max / Mittel − 1',
  'max of the loads': 'Maximum der Lasten',
  'max over sets S of lasers of (load only S can reach) / |S|':
    'max über Mengen S von Lasern von (Last, die nur S erreicht) / |S|',
  'max over sets S of lasers of (load only S can reach) / |S|; no less than the largest part that may not be cut':
    'max über Mengen S von Lasern von (Last, die nur S erreicht) / |S|; nicht unter dem größten Teil, das nicht geteilt werden darf',
  'max(minimum layer time, recoat + exposure)': 'max(Mindest-Schichtzeit, Beschichten + Belichtung)',
  'mean load: {load} / {lasers} lasers that are on = {mean}':
    'mittlere Last: {load} / {lasers} eingeschaltete Laser = {mean}',
  'Mean number of plumes over each beam, by geometry only':
    'Mittlere Zahl der Rauchfahnen über jedem Strahl, reine Geometrie',
  'minimum layer time {minLayer}': 'Mindest-Schichtzeit {minLayer}',
  'Move the zone or widen the reach in Machine.':
    'Die Zone verschieben oder die Reichweite unter Maschine erweitern.',
  'Name it in a drawn zone in Division.': 'Unter Aufteilung in einer gezeichneten Zone nennen.',
  'No part can go to more than one laser whole, so giving whole parts to lasers decides nothing here. A wider shared band, zones for several lasers or the whole field give them a choice.':
    'Kein Teil kann ganz an mehr als einen Laser gehen, also entscheidet es hier nichts, ganze Teile zu vergeben. Ein breiteres gemeinsames Band, Zonen für mehrere Laser oder das ganze Feld geben ihnen eine Wahl.',
  'Nothing on the plate at this height.': 'Auf dieser Höhe steht nichts auf der Platte.',
  'nothing to expose: 0': 'nichts zu belichten: 0',
};
