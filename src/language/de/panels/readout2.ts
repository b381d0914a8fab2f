/** German of the panels: readout, from “of the plate before; com” to “Σ section areas of the p”. */
export const PANELS_READOUT2 = {
  'of the plate before; computing{far}': 'der vorigen Platte; rechnet{far}',
  'One way': 'Eine Richtung',
  'one way, {oneWay} a layer: {timeOneWay}': 'eine Richtung, {oneWay} je Schicht: {timeOneWay}',
  'Parts with a choice of laser': 'Teile mit Wahl des Lasers',
  'Parts with a seam at this height.': 'Teile mit einer Naht auf dieser Höhe.',
  'pieces of {count} parts': 'Stücke von {count} Teilen',
  'Places where a seam meets the part’s outline and may show on its surface.':
    'Stellen, an denen eine Naht den Umriss des Teils trifft und an der Oberfläche sichtbar sein kann.',
  PLUMES: 'RAUCHFAHNEN',
  plumes: 'Rauchfahnen',
  'Plumes over each beam, by geometry only': 'Rauchfahnen über jedem Strahl, reine Geometrie',
  'Plumes over {id}': 'Rauchfahnen über {id}',
  'Proven: no sharing within this division is faster. {lasers} [sets|set] it: change what only [it|they] can reach to get below.':
    'Bewiesen: keine Verteilung innerhalb dieser Aufteilung ist schneller. {lasers} [setzt|setzen] sie: ändern, was nur [er erreicht|sie erreichen], um darunter zu kommen.',
  'Recoating and exposure, or the minimum layer time where that is longer. An estimate.':
    'Beschichten und Belichtung, oder die Mindest-Schichtzeit, wo sie länger ist. Eine Schätzung.',
  'recoating {recoat} of it': 'davon Beschichten {recoat}',
  'Scan area of {id}': 'Scanfläche von {id}',
  'scan area, mm²': 'Scanfläche, mm²',
  'Scan volume': 'Scanvolumen',
  'scan volume, cm³': 'Scanvolumen, cm³',
  'seam length · seam overlap': 'Nahtlänge · Nahtüberlappung',
  'seam length, mm': 'Nahtlänge, mm',
  'Seams and extra pieces that the bound does not count; real loads count them.':
    'Nähte und zusätzliche Stücke, die die Schranke nicht zählt; wirkliche Lasten zählen sie.',
  'section area in no cell': 'Schnittfläche in keiner Zelle',
  'Section area that no laser may expose: outside the zones, out of reach, off the platform, or under a laser that is off. It blocks hand-over.':
    'Schnittfläche, die kein Laser belichten darf: außerhalb der Zonen, außer Reichweite, neben der Bauplattform oder unter einem ausgeschalteten Laser. Sie hindert die Übergabe.',
  'Section area this laser exposes, before the hatch inset, with half the seam overlap at its seams.':
    'Schnittfläche, die dieser Laser belichtet, vor dem Hatch-Versatz, mit der halben Nahtüberlappung an seinen Nähten.',
  'section area, mm²': 'Schnittfläche, mm²',
  'section of its pieces + seam length · seam overlap / 2':
    'Schnitt seiner Stücke + Nahtlänge · Nahtüberlappung / 2',
  'section of {pieces} pieces': 'Schnitt von {pieces} Stücken',
  'Strips stop at {most}: change a strip’s laser in Division, or take drawn zones (A) or the whole field (R).':
    'Mehr als {most} Streifen gehen nicht: den Laser eines Streifens unter Aufteilung ändern, oder gezeichnete Zonen (A) oder das ganze Feld (R) nehmen.',
  'Switch it off, or widen its reach in Machine.':
    'Ausschalten oder seine Reichweite unter Maschine erweitern.',
  'switched off: 0 s': 'ausgeschaltet: 0 s',
  'switched off: no figures': 'ausgeschaltet: keine Werte',
  't_p, {pieces} pieces · {pieceGap} s': 't_p, {pieces} Stücke · {pieceGap} s',
  'The build time times what finished builds took of their planned hours, with one standard deviation; set in the calendar.':
    'Die Bauzeit mal dem, was fertige Baujobs von ihren geplanten Stunden brauchten, mit einer Standardabweichung; im Kalender eingestellt.',
  'The same exposure with either way of recoating; {set} is set. A layer still takes at least the minimum.':
    'Dieselbe Belichtung mit beiden Arten zu beschichten; eingestellt: {set}. Eine Schicht dauert weiterhin mindestens das Minimum.',
  'The same over scan areas. Balance time, not area: walls and holes cost time that area does not show.':
    'Dasselbe über Scanflächen. Zeit ausgleichen, nicht Fläche: Wände und Löcher kosten Zeit, die die Fläche nicht zeigt.',
  'the seconds below hold the time factors: {list}': 'die Sekunden unten enthalten die Zeitfaktoren: {list}',
  'The slowest laser’s load; the others wait for it.':
    'Die Last des langsamsten Lasers; die anderen warten auf ihn.',
  'this rule decides nothing here': 'diese Regel entscheidet hier nichts',
  'Time in which at least one laser exposes.': 'Zeit, in der mindestens ein Laser belichtet.',
  'Time lasers wait for the slowest one, summed over all of them.':
    'Zeit, die Laser auf den langsamsten warten, über alle summiert.',
  'Time this laser exposes in the layer. Thin walls cost more than a block of the same area.':
    'Zeit, die dieser Laser in der Schicht belichtet. Dünne Wände kosten mehr als ein Block gleicher Fläche.',
  'Time this laser waits for the slowest one. Recoating and the minimum layer time are not in it.':
    'Zeit, die dieser Laser auf den langsamsten wartet. Beschichten und Mindest-Schichtzeit sind nicht enthalten.',
  'unassigned, mm²': 'nicht zugewiesen, mm²',
  'Under “whole parts” each part goes to one laser that may expose all of it; only parts with two such lasers or more can be balanced.':
    'Bei „ganze Teile“ geht jedes Teil an einen Laser, der alles davon belichten darf; nur Teile mit zwei oder mehr solchen Lasern lassen sich ausgleichen.',
  'What each laser exposes over the whole height: scan area times layer thickness.':
    'Was jeder Laser über die ganze Höhe belichtet: Scanfläche mal Schichtdicke.',
  'What goes out to the lasers must be what the section holds, nothing twice and nothing lost.':
    'Was an die Laser geht, muss sein, was der Schnitt enthält, nichts doppelt und nichts verloren.',
  'Whole parts with a choice of laser': 'Ganze Teile mit Wahl des Lasers',
  'without {volume}': 'ohne {volume}',
  '{count} more lasers': '{count} weitere Laser',
  '{count} more parts': '{count} weitere Teile',
  '{count} more stretches': '{count} weitere Bereiche',
  '{count} more terms': '{count} weitere Glieder',
  '{exposure} − {bestPossible}; due to cuts: {costOfCutting}':
    '{exposure} − {bestPossible}; durch Schnitte: {costOfCutting}',
  '{id}: chance {chance} · min(1, {load} / {load2})':
    '{id}: Wahrscheinlichkeit {chance} · min(1, {load} / {load2})',
  '{lasers}: on, its zone is out of reach.': '{lasers}: an, die Zone ist außer Reichweite.',
  '{lasers}: on, no zone.': '{lasers}: an, keine Zone.',
  '{layers} layers, all figures estimates': '{layers} Schichten, alle Werte Schätzungen',
  '{layers} layers, being computed{far}': '{layers} Schichten, wird berechnet{far}',
  '{line} that no laser exposes': '{line}, die kein Laser belichtet',
  '{none} fit no laser’s zone whole: cut along the zones, or unassigned in part':
    '{none} passen in keine Zone ganz: entlang der Zonen geteilt oder teils nicht zugewiesen',
  '{number} more parts, all below': '{number} weitere Teile, alle darunter',
  '{parts} parts; not proven to be the fewest': '{parts} Teile; nicht als die wenigsten bewiesen',
  '{parts} parts; proven to be the fewest for this exposure':
    '{parts} Teile; als die wenigsten für diese Belichtung bewiesen',
  '{seams} seams in {cutParts} parts': '{seams} Nähte in {cutParts} Teilen',
  '{several} of {count} have two lasers or more, {one} have one':
    '{several} von {count} haben zwei oder mehr Laser, {one} haben einen',
  '{vectors} vectors': '{vectors} Vektoren',
  '{witnessLines} on {seams} seams': '{witnessLines} an {seams} Nähten',
  'θ = atan(distance from foot / working height); spot longer by 1/cos θ':
    'θ = atan(Abstand vom Fußpunkt / Arbeitshöhe); Fleck länger um 1/cos θ',
  'θ = atan({distance} / {workingHeight})': 'θ = atan({distance} / {workingHeight})',
  'Σ exposure / Σ mean load − 1': 'Σ Belichtung / Σ mittlere Last − 1',
  'Σ lengths of the seams': 'Σ Längen der Nähte',
  'Σ over layers and lasers of (exposure − load)': 'Σ über Schichten und Laser von (Belichtung − Last)',
  'Σ over layers and lasers of the loads': 'Σ über Schichten und Laser der Lasten',
  'Σ over layers of max(minimum, recoat + exposure)':
    'Σ über Schichten von max(Minimum, Beschichten + Belichtung)',
  'Σ over layers of scan area · layer thickness': 'Σ über Schichten von Scanfläche · Schichtdicke',
  'Σ over stretches of layers · layer time': 'Σ über Bereiche aus Schichten · Schichtzeit',
  'Σ over stretches of layers · max(0, minimum − recoat − exposure)':
    'Σ über Bereiche aus Schichten · max(0, Minimum − Beschichten − Belichtung)',
  'Σ over stretches of layers · slowest laser': 'Σ über Bereiche aus Schichten · langsamster Laser',
  'Σ over upwind lasers of the chance that the beam stands in the strip behind their spot · min(1, E_i/E_j)':
    'Σ über stromauf liegende Laser der Wahrscheinlichkeit, dass der Strahl im Streifen hinter ihrem Fleck steht · min(1, E_i/E_j)',
  'Σ scan areas − double exposure + unassigned = section area':
    'Σ Scanflächen − Doppelbelichtung + nicht zugewiesen = Schnittfläche',
  'Σ section areas of the parts': 'Σ Schnittflächen der Teile',
};
