/**
 * Files that are made from an analysis as it stands: the table of layers, the picture, the drawing of zones and seams, the
 * report. Heights in mm above the platform, pictures in px.
 */
import { t } from '../../language/index';
import { layerAtHeight } from '../../build/analysis';
import type { Analysis } from '../../build/types';
import { formatField } from '../../units/format';
import type { Mm, Px } from '../../units/types';
import { zonesDxf } from '../drawing/zonesDxf';
import { zonesSvg } from '../drawing/zonesSvg';
import { exportName, isBlocked, NOT_FOR_USE, stateWords, type FileSource } from '../forUse';
import { planPictureOf, planSvg } from '../plan/planSvg';
import { report } from '../report';
import { csvSteps } from '../table/csv';
import { layersTable } from '../table/layersTable';
import { csvFile } from './csvFile';
import type { FileMade, LayersAsked, PictureAsked, ReportAsked, ShortFile, ZonesAsked } from './types';

/** Of a picture at 1×; its height follows from the platform. */
export const PICTURE_PX: Px = 1200;

interface Source extends FileSource {
  readonly analysis: Analysis;
}

/** "z-20-3", so that files of two heights have two names. */
const heightWords = (height_mm: Mm): string => `z-${formatField(height_mm).replace(/[.,]/, '-')}`;

/** The height inside the build that is nearest. */
const inside = ({ build }: Analysis, height_mm: Mm): Mm => Math.min(Math.max(0, height_mm), build.height_mm);

function* layersFile(source: Source, { csv }: LayersAsked): Generator<number, FileMade> {
  const text = yield* csvSteps(layersTable(source.analysis), csv);
  return csvFile(exportName(source, 'layers.csv'), text);
}

function captionOf({ layout, checksum, blocked }: Source, height_mm: Mm): string {
  const { name, revision } = layout;
  const filed =
    revision === null
      ? ''
      : `, ${t('revision {name}, {state}', { name: revision.name, state: t(revision.state) })}`;
  return `${blocked ? `${t(NOT_FOR_USE)}: ` : ''}${name}${filed}, z ${formatField(height_mm)} mm, ${checksum}`;
}

function pictureFile(source: Source, { height_mm, ground, labels }: PictureAsked): FileMade {
  const at_mm = inside(source.analysis, height_mm);
  const content = planSvg(planPictureOf(source.analysis, at_mm), {
    width_px: PICTURE_PX,
    ground,
    labels,
    rulers: true,
    zoneNumbers: true,
    legend: true,
    caption: captionOf(source, at_mm),
    ...(source.blocked ? { stamp: t(NOT_FOR_USE) } : {}),
  });
  return { name: exportName(source, `plan-${heightWords(at_mm)}.svg`), mime: 'image/svg+xml', content };
}

function zonesFile(source: Source, { height_mm, form }: ZonesAsked): FileMade {
  const { analysis, blocked } = source;
  const at_mm = inside(analysis, height_mm);
  const picture = planPictureOf(analysis, at_mm);
  const name = exportName(source, `zones-${heightWords(at_mm)}.${form}`);
  return form === 'dxf'
    ? { name, mime: 'image/vnd.dxf', content: zonesDxf(picture, { blocked, platform: true }) }
    : { name, mime: 'image/svg+xml', content: zonesSvg(picture, blocked) };
}

function reportFile(source: Source, { height_mm }: ReportAsked): FileMade {
  const { analysis, checksum } = source;
  const at = layerAtHeight(analysis, inside(analysis, height_mm));
  const made = report(analysis, at?.figures ?? analysis.layer(1), at?.height_mm, checksum);
  const stated = { ...made, layout: { ...made.layout, state: stateWords(analysis) } };
  const name = exportName(source, 'report.json');
  return { name, mime: 'application/json', content: `${JSON.stringify(stated, null, 2)}\n` };
}

/** The file of an analysis that is checked. Yields how far it is, 0 to 1. @param checksum the layout's */
export function* shortFileSteps(
  analysis: Analysis,
  checksum: string,
  asked: ShortFile,
): Generator<number, FileMade> {
  const source = { analysis, checksum, layout: analysis.layout, blocked: isBlocked(analysis) };
  switch (asked.kind) {
    case 'layers':
      return yield* layersFile(source, asked);
    case 'picture':
      return pictureFile(source, asked);
    case 'zones':
      return zonesFile(source, asked);
    case 'report':
      return reportFile(source, asked);
  }
}
