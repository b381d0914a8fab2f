/**
 * What links with the prefix 1 have in common, in the order of canonical JSON: the keys of a layout with the values of a
 * fresh plate. Links name stretches of it instead of repeating them. It never changes: every link that was ever sent
 * with this prefix needs it to the letter. A better one comes with a new prefix.
 */
import { utf8ToBytes } from '@noble/hashes/utils.js';

const WORDS = [
  '"P01","P02","P03","P04","P05","P06","P07","P08","P09","P10","P11","P12","P13","P14","P15","P16","P17","P18",',
  '"P19","P20","P21","P22","P23","P24","P25","P26","P27","P28","P29","P30","P31","P32","P33","P34","P35","P36",',
  '["P01",{"laser":"L1","seams":"none","timeFactor":1.5}],',
  '"revision":{"author":"","date":"2026-11-27","derivedFrom":null,"name":"A","reason":"","reviewer":"",',
  '"state":"draft"},"state":"reviewed"},"state":"released"},"state":"superseded"},"derivedFrom":"',
  '"schedule":{"attended":{"fri":[["06:00","22:00"]],"mon":[["06:00","22:00"]],"sat":[],"sun":[],',
  '"thu":[["06:00","22:00"]],"tue":[["06:00","22:00"]],"wed":[["06:00","22:00"]]},',
  '"correction":{"factor":1,"spread_pct":10},"feedFilled_l":60,"overflowFilled_l":0,"residue_laserH":0,',
  '"start":"2026-11-27T16:00"},"schedule":null,"shapes":["ring","bracket","plate","block","version":2,"version":3,',
  '"zoning":[{"from_mm":0,"zoning":{"lasers":["L1","L2","L3","L4","L5","L6","L7","L8"],"lines_mm":[0],"run_deg":90,',
  '"sharedBand_mm":0,"strategy":"strips"}},{"from_mm":{"strategy":"wholeField"}{"strategy":"drawn","zones":[',
  '{"lasers":["L1"],"rings":[{"~":0}]},{"lasers":["L1","L2"],"rings":[{"~":0}]}]}',
  '{"layouts":[{"allocation":"wholeParts","allocation":"balanced","format":"evenplate-layout",',
  '"limits":{"chainGap_mm":0.01,"crumbArea_mm2":4,"crumbWidth_mm":1.5,"plumeHalfWidth_mm":10,"spacing_mm":3},',
  '"machine":{"buildHeight_mm":360,"gasFlow":{"towards_deg":270},"lasers":[',
  '{"foot_mm":[-75,-75],"id":"L1","on":true,"power_W":450,"reach":null,"workingHeight_mm":540},',
  '{"foot_mm":[75,-75],"id":"L2","on":true,"power_W":450,"reach":null,"workingHeight_mm":540},',
  '{"foot_mm":[-75,75],"id":"L3","on":true,"power_W":450,"reach":null,"workingHeight_mm":540},',
  '{"foot_mm":[75,75],"id":"L4","on":true,"power_W":450,"reach":null,"workingHeight_mm":540}],',
  '"name":"Four lasers, 340 mm","platform":{"depth_mm":340,"keepOuts":[],"margin_mm":8,"width_mm":340},',
  '"powder":{"feed_l":60,"overflow_l":25,"residueInterval_laserH":240},',
  '"recoater":{"bothWays_s":7.5,"mode":"bothWays","mode":"oneWay","oneWay_s":10,"towards_deg":0}},',
  '"name":"","note":"","parts":["P01"],"process":{"contourSpeed_mm_s":600,"contours":1,"density_g_cm3":4.43,',
  '"doseFactor":2,"hatchInset_mm":0.05,"hatch_mm":0.1,"layer_mm":0.06,"minLayer_s":0,',
  '"name":"Ti-6Al-4V, 0.06 mm","packing":0.58,"pieceGap_s":0.02,"seamOverlap_mm":0.1,"speed_mm_s":1200,',
  '"vectorCount":"area","vectorCount":"areaAndOutline","vectorGap_ms":0.4,"vector_mm":10},"shapes":[],',
  '"version":1,"zoning":{"at_mm":[0,0],"lasers":["L1","L2","L3","L4"],"sharedBand_mm":0,"strategy":"quadrants"}}],',
  '"view":{"camera":{"centreX_mm":0,"centreY_mm":0,"pxPerMm":2},"height_mm":0}}',
];

export const DICTIONARY_1 = utf8ToBytes(WORDS.join(''));
