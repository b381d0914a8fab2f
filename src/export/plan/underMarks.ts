/**
 * What lies under the parts in a picture of the plan: platform with its front edge, margin and axes, zones with their
 * bands, reach, keep-outs, zone lines. Plate millimetres in, picture px out.
 */
import { t } from '../../language/index';
import { ringFromLayout } from '../../geometry/ring';
import type { Platform } from '../../layout/types';
import type { Px } from '../../units/types';
import { has, membersOf } from '../../zoning/lasers';
import type { Division, Zone } from '../../zoning/types';
import { toPicture, type Frame } from './frame';
import type { PlanInk } from './ink';
import { lineEnds } from './lineEnds';
import { box, hatch, line, outline, write } from './marks';
import { THICK_PX, THIN_PX, type Hatching } from './palette';
import type { PlanPicture } from './planPicture';

/** Dashes of margins and band edges; centre lines and zone lines. */
const DASHED: readonly Px[] = [6, 4];
const CHAIN: readonly Px[] = [14, 3, 2, 3];
const KEEP_OUT: Hatching = { angle_deg: 45, spacing_px: 9.5, dash_px: [] };
const AXIS_PAST_PX: Px = 5;

function platformMarks(frame: Frame, ink: PlanInk, platform: Platform): string[] {
  const { sheet, line: colour } = ink.ground;
  const [width, height] = [frame.right - frame.left, frame.bottom - frame.top];
  const margin = platform.margin_mm * frame.pxPerMm;
  const centre = toPicture(frame, 0, 0);
  const axis = { colour, width_px: THIN_PX, dash_px: CHAIN };
  const [above, below] = [frame.top - AXIS_PAST_PX, frame.bottom + AXIS_PAST_PX];
  const [before, past] = [frame.left - AXIS_PAST_PX, frame.right + AXIS_PAST_PX];
  const inner = box(
    frame.left + margin,
    frame.top + margin,
    Math.max(0, width - 2 * margin),
    Math.max(0, height - 2 * margin),
    'none',
    { colour, width_px: THIN_PX, dash_px: DASHED },
  );
  return [
    box(frame.left, frame.top, width, height, sheet),
    ...(margin > 0 ? [inner] : []),
    line({ left: centre.left, top: above }, { left: centre.left, top: below }, axis),
    line({ left: before, top: centre.top }, { left: past, top: centre.top }, axis),
  ];
}

function zoneMarks(frame: Frame, ink: PlanInk, division: Division, { lasers, region }: Zone): string[] {
  const members = membersOf(lasers);
  const tints = members.filter((laser) => has(division.on, laser)).map((laser) => ink.laser(laser).zone);
  const first = members[0];
  const on = first !== undefined && has(division.on, first);
  const colour = on ? ink.laser(first).stroke : ink.ground.line;
  const dash_px = division.sharedBand_mm > 0 ? DASHED : [];
  return [
    ...tints.filter(({ opacity }) => opacity > 0).map((tint) => outline(frame, region, null, tint)),
    outline(frame, region, { colour, width_px: THIN_PX, dash_px }),
  ];
}

function reachMarks(frame: Frame, ink: PlanInk, { layout, division }: PlanPicture): string[] {
  return layout.machine.lasers.map((laser, i) => {
    const reach = division.reach[i];
    if (!reach || !laser.reach || !laser.on) return '';
    return outline(frame, reach, { colour: ink.laser(i).stroke, width_px: THIN_PX, dash_px: CHAIN });
  });
}

function keepOutMarks(frame: Frame, ink: PlanInk, { keepOuts }: Platform): string[] {
  const pen = { colour: ink.ground.line, width_px: THIN_PX };
  return keepOuts
    .map(ringFromLayout)
    .flatMap((ring) => [
      outline(frame, [ring], null, { colour: ink.ground.faint }),
      hatch(frame, [ring], KEEP_OUT, pen),
      outline(frame, [ring], { colour: ink.ground.ink, width_px: THIN_PX }),
    ]);
}

function frontMarks(frame: Frame, ink: PlanInk, named: boolean): string[] {
  const colour = ink.ground.ink;
  const [width, height] = [frame.right - frame.left, frame.bottom - frame.top];
  const edge = frame.bottom + THICK_PX / 2;
  const front = line(
    { left: frame.left, top: edge },
    { left: frame.right, top: edge },
    { colour, width_px: 2 * THICK_PX },
  );
  const word = write(
    t('FRONT'),
    { left: frame.left, top: edge + 13 },
    { colour, bold: true, align: 'start' },
  );
  const edges = box(frame.left, frame.top, width, height, 'none', { colour, width_px: THIN_PX });
  return [edges, front, ...(named ? [word] : [])];
}

/** Everything under the parts. */
export const underMarks = (frame: Frame, ink: PlanInk, picture: PlanPicture, named: boolean): string[] => {
  const { division, layout } = picture;
  const { platform } = layout.machine;
  return [
    ...platformMarks(frame, ink, platform),
    ...division.zones.flatMap((zone) => zoneMarks(frame, ink, division, zone)),
    ...reachMarks(frame, ink, picture),
    ...keepOutMarks(frame, ink, platform),
    ...frontMarks(frame, ink, named),
  ];
};

/** The lines between zones, over the parts. */
export const zoneLineMarks = (frame: Frame, ink: PlanInk, { division, layout }: PlanPicture): string[] =>
  division.lines.flatMap((zoneLine) => {
    const ends = lineEnds(zoneLine, layout.machine.platform);
    if (!ends) return [];
    const [from, to] = ends.map(({ x, y }) => toPicture(frame, x, y));
    return [
      line(from, to, { colour: ink.ground.sheet, width_px: THICK_PX + 1 }),
      line(from, to, { colour: ink.ground.ink, width_px: THIN_PX, dash_px: CHAIN }),
    ];
  });
