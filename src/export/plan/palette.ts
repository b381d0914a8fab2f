/**
 * Colours and hatchings of the lasers and the two grounds of the drawing, for canvas, bars and keys alike.
 *
 * Hues: the seven of Okabe and Ito's set for colour-blind readers, black left out because black is ink. As a tint a
 * hue fills; as a stroke it is darkened (on paper) or lightened (on the dark ground) until it stands 3:1 or better
 * against the ground, the platform and its own tint (WCAG 2.2, 1.4.11). From the eighth laser on a hue comes again
 * with another hatching. Hatching says who exposes an area; it never shows the scan direction.
 * Source of the hues: M. Okabe, K. Ito, "Color Universal Design" (2008) [memory].
 */
import type { Degrees, Px } from '../../units/types';

export type Theme = 'light' | 'dark';

/** Two line widths, 1:2 (ISO 128). Screen px. */
export const THIN_PX = 1;
export const THICK_PX = 2;

/** The drawing's share of the page's colours; tokens.css holds the same values for everything around it. */
export interface Ground {
  /** Around the platform. */
  readonly paper: string;
  /** The platform itself. */
  readonly sheet: string;
  /** Outlines and words. */
  readonly ink: string;
  /** Secondary words, dimension lines; 4.5:1 on paper and sheet. */
  readonly note: string;
  /** Lines that carry a meaning; 3:1 on paper and sheet. */
  readonly line: string;
  /** Grid and other lines that only support. */
  readonly faint: string;
  /** What needs attention; none of the laser hues. 4.5:1 on paper and sheet. */
  readonly warning: string;
}

export const GROUNDS: Readonly<Record<Theme, Ground>> = {
  light: {
    paper: '#f7f5ef',
    sheet: '#fdfcf9',
    ink: '#1b2329',
    note: '#545e67',
    line: '#858c93',
    faint: '#dcd8cd',
    warning: '#b00030',
  },
  dark: {
    paper: '#14181c',
    sheet: '#1a1f24',
    ink: '#e6e4de',
    note: '#a3abb2',
    line: '#6b757e',
    faint: '#2b3238',
    warning: '#ff8096',
  },
};

/** Blue, orange, bluish green, reddish purple, sky blue, vermilion, yellow. */
export const HUES = ['#0072B2', '#E69F00', '#009E73', '#CC79A7', '#56B4E9', '#D55E00', '#F0E442'] as const;

const STROKES: Readonly<Record<Theme, readonly string[]>> = {
  light: ['#0072B2', '#A87500', '#008662', '#A9658A', '#4085AD', '#C25500', '#8B8426'],
  dark: ['#2A8AC0', '#E69F00', '#009E73', '#CC79A7', '#56B4E9', '#DA6A12', '#F0E442'],
};
const SECTION_TINT = 0.24;
/** Opacity of the hue that fills a zone. */
export const ZONE_TINT = 0.06;

/** Angles, and distances between hatch lines in screen px, by place among the seven hues. */
const ANGLES_DEG: readonly Degrees[] = [45, 135, 20, 110, 65, 155, 90];
const SPACINGS_PX: readonly Px[] = [7, 7, 9, 9, 7, 7, 9];
/** By how often the hues have come round. Dashes and gaps in screen px; [] is a solid line. */
const ROUND_DASHES: readonly (readonly Px[])[] = [[], [9, 4], [2, 4], [12, 3, 2, 3], [5, 9]];
const ROUND_TURN_DEG: Degrees = 30;

export interface Hatching {
  /** Of the lines, counter-clockwise from +x. */
  readonly angle_deg: Degrees;
  /** Wanted distance between lines; between 6 and 10 px once rounded to a step. */
  readonly spacing_px: Px;
  readonly dash_px: readonly Px[];
}
export interface LaserStyle {
  readonly hue: string;
  /** Lines and hatching. */
  readonly stroke: string;
  /** Fill of sections and bars, opaque. */
  readonly tint: string;
  /** Fill of zones, to be laid over the platform. */
  readonly zoneTint: string;
  readonly hatching: Hatching;
}

const channels = (hex: string): readonly number[] =>
  [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));

/** `share` of `over` laid on `under`, both "#RRGGBB". */
const mix = (under: string, over: string, share: number): string => {
  const top = channels(over);
  const mixed = channels(under).map((low, i) => Math.round(low * (1 - share) + top[i] * share));
  return `#${mixed.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
};

const translucent = (hex: string, share: number): string => `rgba(${channels(hex).join(', ')}, ${share})`;

const makeStyle = (index: number, theme: Theme): LaserStyle => {
  const place = index % HUES.length;
  const round = Math.floor(index / HUES.length);
  const hue = HUES[place] ?? HUES[0];
  return {
    hue,
    stroke: STROKES[theme][place] ?? hue,
    tint: mix(GROUNDS[theme].sheet, hue, SECTION_TINT),
    zoneTint: translucent(hue, ZONE_TINT),
    hatching: {
      angle_deg: ((ANGLES_DEG[place] ?? 45) + round * ROUND_TURN_DEG) % 180,
      spacing_px: SPACINGS_PX[place] ?? 7,
      dash_px: ROUND_DASHES[round % ROUND_DASHES.length] ?? [],
    },
  };
};

const made = new Map<string, LaserStyle>();

/**
 * How the machine's `index`-th laser (0-based) is drawn on the ground of `theme`. The same object each time.
 * Throws a RangeError where index is not a whole number ≥ 0.
 */
export const laserStyle = (index: number, theme: Theme): LaserStyle => {
  if (!Number.isInteger(index) || index < 0) throw new RangeError(`laser index ${index}: expected 0, 1, 2 …`);
  const key = `${theme}${index}`;
  const style = made.get(key) ?? makeStyle(index, theme);
  made.set(key, style);
  return style;
};

/** The hatching of a laser as a CSS background for bars and keys: lines over the tint. */
export const hatchBackground = (index: number, theme: Theme): string => {
  const { stroke, tint, hatching } = laserStyle(index, theme);
  const gap = hatching.spacing_px;
  const lines = `repeating-linear-gradient(${180 - hatching.angle_deg}deg, transparent 0 ${gap - THIN_PX}px, ${stroke} ${gap - THIN_PX}px ${gap}px)`;
  return `${lines}, ${tint}`;
};
