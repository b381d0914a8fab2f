/**
 * The colours a picture of the plan is drawn in: the two grounds of the screen, and black on white for paper, where
 * hatching and grey tints tell the lasers apart.
 */
import type { Px } from '../../units/types';
import { GROUNDS, HUES, laserStyle, ZONE_TINT, type Ground, type Hatching } from './palette';

export type PlanGround = 'light' | 'dark' | 'print';

export interface LaserInk {
  readonly stroke: string;
  /** Of sections, opaque. */
  readonly tint: string;
  /** Of zones, laid over the platform; 0 where zones are told apart by number alone. */
  readonly zone: { readonly colour: string; readonly opacity: number };
  readonly hatching: Hatching;
}
export interface PlanInk {
  readonly ground: Ground;
  readonly laser: (index: number) => LaserInk;
}

const BLACK_ON_WHITE: Ground = {
  paper: '#ffffff',
  sheet: '#ffffff',
  ink: '#000000',
  note: '#404040',
  line: '#767676',
  faint: '#d9d9d9',
  warning: '#000000',
};
/** Of neighbouring lasers as far apart as grey print keeps apart; 9:1 or better under black hatching. */
const GREYS = ['#f2f2f2', '#d2d2d2', '#ffffff', '#e2e2e2'] as const;
/** Paper is read from further away than a screen: from the fifth laser on, a grey comes again with wider hatching. */
const WIDER: Px = 3;

function printInk(index: number): LaserInk {
  const { hatching } = laserStyle(index, 'light');
  const round = Math.floor((index % HUES.length) / GREYS.length);
  return {
    stroke: '#000000',
    tint: GREYS[index % GREYS.length] ?? GREYS[0],
    zone: { colour: '#000000', opacity: 0 },
    hatching: { ...hatching, spacing_px: hatching.spacing_px + round * WIDER },
  };
}

/** The ink of a ground. */
export function planInk(ground: PlanGround): PlanInk {
  if (ground === 'print') return { ground: BLACK_ON_WHITE, laser: printInk };
  const laser = (index: number): LaserInk => {
    const { hue, stroke, tint, hatching } = laserStyle(index, ground);
    return { stroke, tint, hatching, zone: { colour: hue, opacity: ZONE_TINT } };
  };
  return { ground: GROUNDS[ground], laser };
}
