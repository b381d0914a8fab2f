/**
 * The plan at one height as a complete SVG text: plain vectors, hatching as line segments, no references to anything
 * outside it, everything a user typed escaped. For the sheet, for plates side by side, for files. Plate millimetres in,
 * picture px out. Hatching tells who exposes an area; it is not the scan direction.
 */
import { formatField } from '../../units/format';
import { t } from '../../language/index';
import { captionMark, legendMarks, legendRows, rulerMarks, stampMark, streamMarks } from './besideMarks';
import { frameOf, type Frame } from './frame';
import { planInk, type PlanInk } from './ink';
import { box, escapeXml, FONT, px } from './marks';
import { zoneNumberMarks } from './numberMarks';
import { partMarks, partNames } from './partMarks';
import type { PlanPicture, PlanStyle } from './planPicture';
import { underMarks, zoneLineMarks } from './underMarks';

export { planPictureOf, type PlanPicture, type PlanStyle } from './planPicture';

/** Names, numbers and arrows: what is written over the plan, each clear of the others. */
function writtenMarks(frame: Frame, ink: PlanInk, picture: PlanPicture, style: PlanStyle): string[] {
  const names = style.labels ? partNames(frame, ink, picture, style.everyName) : { marks: [], boxes: [] };
  const streams = style.rulers ? streamMarks(frame, ink, picture.layout) : { marks: [], boxes: [] };
  const legible = [...names.boxes, ...streams.boxes];
  const numbers = style.zoneNumbers ? zoneNumberMarks(frame, ink, picture, legible, style.rulers) : [];
  return [...names.marks, ...streams.marks, ...numbers];
}

function besideMarks(frame: Frame, ink: PlanInk, { layout }: PlanPicture, style: PlanStyle): string[] {
  return [
    ...(style.rulers ? rulerMarks(frame, ink, layout) : []),
    ...(style.caption === undefined ? [] : [captionMark(ink, style.caption)]),
    ...(style.legend === true ? legendMarks(frame, ink, layout) : []),
  ];
}

const nameOf = ({ layout, layer }: PlanPicture): string =>
  layer
    ? t('Plan of {name} at {height} mm', { name: layout.name, height: formatField(layer.height_mm) })
    : t('Plan of {name}', { name: layout.name });

/** The picture as SVG text. */
export function planSvg(picture: PlanPicture, style: PlanStyle): string {
  const { machine } = picture.layout;
  const rows = style.legend === true ? legendRows(machine.lasers.length, style.width_px) : 0;
  const frame = frameOf(machine.platform, style, rows);
  const ink = planInk(style.ground);
  const [width, height] = [px(frame.width), px(frame.height)];
  const marks = [
    box(0, 0, frame.width, frame.height, ink.ground.paper),
    ...underMarks(frame, ink, picture, style.rulers),
    ...partMarks(frame, ink, picture),
    ...zoneLineMarks(frame, ink, picture),
    ...besideMarks(frame, ink, picture, style),
    ...writtenMarks(frame, ink, picture, style),
    ...(style.stamp === undefined ? [] : [stampMark(frame, ink, style.stamp)]),
  ];
  const name = escapeXml(nameOf(picture));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="${FONT}" role="img" aria-label="${name}">`,
    `<title>${name}</title>`,
    ...marks.filter((mark) => mark !== ''),
    '</svg>',
  ].join('\n');
}
