/**
 * The plan at one height with rulers and arrows; where the zoning changes over the height, smaller plans of its other
 * steps beside it. Millimetres.
 */
import { t } from '../../../language/index';
import { middleOfLayer, layerAt } from '../../../build/layers';
import type { Analysis } from '../../../build/types';
import { stepAt } from '../../../layout/steps';
import { formatField } from '../../../units/format';
import type { Mm, Px } from '../../../units/types';
import { escapeXml } from '../../plan/marks';
import { planPictureOf, planSvg } from '../../plan/planSvg';
import type { Place } from './flow';
import type { Drawn } from './head';
import { inset, words } from './pen';

/** The plan's words of 12 px are 2.9 mm high in print. */
const PX_PER_MM = 4.2;
const SIDE: Mm = 32;
const GAP: Mm = 3;
/** A small plan's words are 2.4 mm high. */
const SIDE_PX_PER_MM = 5;
/** Of the plan on a page of its own: 2.4 mm. */
const LARGE_PX_PER_MM = 5;

interface View {
  readonly height_mm: Mm;
  readonly caption: string;
}

const TOO_HIGH = 1e9;

function stepView({ layout, build }: Analysis, step: number, height_mm: Mm | null): View {
  const { layer_mm } = layout.process;
  const from = layout.zoning[step]!.from_mm;
  const to = layout.zoning[step + 1]?.from_mm ?? TOO_HIGH;
  const at = height_mm ?? middleOfLayer(Math.max(1, Math.ceil(from / layer_mm + 0.5 - 1e-9)), layer_mm);
  const layer = layerAt(at, layer_mm, build.height_mm);
  const shown = layer === 0 ? at : middleOfLayer(layer, layer_mm);
  const range =
    to >= build.height_mm
      ? t('from {from}', { from: formatField(from) })
      : `${formatField(from)}–${formatField(to)}`;
  const zones =
    layout.zoning.length === 1
      ? t('zones hold over the whole height')
      : t('zones for z {range} mm', { range });
  return {
    height_mm: at,
    caption:
      height_mm === null
        ? `z ${range} mm`
        : t('PLAN at z {shown} mm, {zones}', { shown: formatField(shown), zones }),
  };
}

/** Steps of the zoning that the build reaches, without the one shown large. */
const otherSteps = ({ layout, build }: Analysis, shown: number): number[] =>
  layout.zoning.flatMap(({ from_mm }, step) => (step !== shown && from_mm < build.height_mm ? [step] : []));

const ratioOf = (picture: string): number => {
  const [, width = '1', height = '1'] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(picture) ?? [];
  return Number(height) / Number(width);
};

/** A plan as wide as its place, narrower where it would be too high. */
function mainPlan(
  analysis: Analysis,
  view: View,
  place: Place,
  pxPerMm: number,
): Drawn & { picture: string } {
  const draw = (width: Mm): string =>
    planSvg(planPictureOf(analysis, view.height_mm), {
      width_px: width * pxPerMm,
      ground: 'print',
      labels: true,
      everyName: true,
      rulers: true,
      zoneNumbers: true,
      legend: true,
    });
  let width = place.width;
  let picture = draw(width);
  for (let tries = 0; tries < 4 && width * ratioOf(picture) > place.height; tries++) {
    width *= place.height / (width * ratioOf(picture));
    picture = draw(width);
  }
  const height = Math.min(place.height, width * ratioOf(picture));
  return { marks: [inset(picture, place.x, place.y, width, height)], bottom: place.y + height, picture };
}

function sidePlans(analysis: Analysis, steps: readonly number[], place: Place): Drawn {
  const marks: string[] = [];
  let at = place.y;
  for (const [i, step] of steps.entries()) {
    const view = stepView(analysis, step, null);
    const width_px: Px = place.width * SIDE_PX_PER_MM;
    const style = { width_px, ground: 'print', labels: false, rulers: false, zoneNumbers: true } as const;
    const picture = planSvg(planPictureOf(analysis, view.height_mm), style);
    const height = place.width * ratioOf(picture);
    if (at + height + 9 > place.y + place.height) {
      marks.push(
        words(t('and {number} more divisions', { number: steps.length - i }), place.x, at + 3, {
          size: 2.8,
          bold: true,
        }),
      );
      return { marks, bottom: at + 4 };
    }
    marks.push(words(view.caption, place.x, at + 3, { size: 2.8, bold: true }));
    marks.push(inset(picture, place.x, at + 4, place.width, height));
    at += height + 7;
  }
  return { marks, bottom: at };
}

/** Parts whose names stand nowhere in a picture. */
const unnamedIn = (picture: string, { layout }: Analysis): number =>
  layout.parts.filter(({ id }) => !picture.includes(`>${escapeXml(id)}</text>`)).length;

export interface Plans extends Drawn {
  /** Parts whose numbers have no room. */
  readonly unnamed: number;
}

/** @param large the plan alone, with its words smaller */
export function drawPlans(analysis: Analysis, height_mm: Mm, place: Place, large = false): Plans {
  const inside = Math.min(Math.max(0, height_mm), analysis.build.height_mm);
  const step = stepAt(analysis.layout.zoning, inside);
  const others = large ? [] : otherSteps(analysis, step);
  const view = stepView(analysis, step, inside);
  const top = place.y + 5;
  const height = place.height - 5;
  const width = others.length === 0 ? place.width : place.width - SIDE - GAP;
  const pxPerMm = large ? LARGE_PX_PER_MM : PX_PER_MM;
  const main = mainPlan(analysis, view, { x: place.x, y: top, width, height }, pxPerMm);
  const unnamed = unnamedIn(main.picture, analysis);
  const caption = unnamed > 0 && !large ? t('PLAN, with all part numbers: next page') : view.caption;
  const beside = { x: place.x + place.width - SIDE, y: top, width: SIDE, height };
  const sides = sidePlans(analysis, others, beside);
  return {
    marks: [words(caption, place.x, place.y + 3.4, { size: 3.4, bold: true }), ...main.marks, ...sides.marks],
    bottom: Math.max(main.bottom, sides.bottom),
    unnamed,
  };
}
