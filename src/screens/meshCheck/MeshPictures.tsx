/**
 * The body as it will stand: from the front, from above, obliquely. The worker draws, the page gives the ground's colours.
 */
import { t } from '../../language/index';
import { useEffect, useRef } from 'react';
import { GROUNDS, type Theme } from '../../export/plan/palette';
import { useTheme } from '../../canvas/theme';
import { formatMm } from '../../units/format';
import { DARKEST, EMPTY, LINE, type MeshView, type MeshViews } from '../../worker/meshPicture';
import type { Size } from './meshText';

type Rgb = readonly [number, number, number];
const rgb = (hex: string): Rgb =>
  [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16)) as unknown as Rgb;

/** Colour of each value a pixel may have: lines in ink, faces from the quiet lines' grey to the sheet. */
function colours(theme: Theme): Uint32Array {
  const { ink, line, sheet } = GROUNDS[theme];
  const [dark, light] = theme === 'light' ? [rgb(line), rgb(sheet)] : [rgb(sheet), rgb(line)];
  const pixel = ([r, g, b]: Rgb): number => ((255 << 24) | (b << 16) | (g << 8) | r) >>> 0;
  return Uint32Array.from({ length: 256 }, (_, value) => {
    if (value === EMPTY) return 0;
    if (value === LINE) return pixel(rgb(ink));
    const share = (value - DARKEST) / (255 - DARKEST);
    const mixed = [0, 1, 2].map((k) => Math.round(dark[k]! + share * (light[k]! - dark[k]!)));
    return pixel(mixed as unknown as Rgb);
  });
}

function draw(canvas: HTMLCanvasElement, { width, height, pixels }: MeshView, theme: Theme): void {
  const pen = canvas.getContext('2d');
  if (!pen) return;
  const table = colours(theme);
  const image = pen.createImageData(width, height);
  const words = new Uint32Array(image.data.buffer);
  for (let i = 0; i < pixels.length; i++) words[i] = table[pixels[i]!]!;
  pen.putImageData(image, 0, 0);
}

interface PictureProps {
  readonly view: MeshView;
  readonly label: string;
  readonly caption: string;
}

function Picture({ view, label, caption }: PictureProps) {
  const theme = useTheme();
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (canvas.current) draw(canvas.current, view, theme);
  }, [view, theme]);
  return (
    <figure>
      <canvas ref={canvas} width={view.width} height={view.height} aria-label={label} />
      <figcaption>{caption}</figcaption>
    </figure>
  );
}

/** @param size as turned: x, y, z */
export function MeshPictures({ views, size: [x, y, z] }: { readonly views: MeshViews; readonly size: Size }) {
  return (
    <div className="mesh-pictures" data-testid="mesh-pictures">
      <Picture
        view={views.front}
        label={t('from the front')}
        caption={t('front: {x}, {z} high', { x: formatMm(x), z: formatMm(z) })}
      />
      <Picture
        view={views.above}
        label={t('from above')}
        caption={t('above: {x} × {y}', { x: formatMm(x), y: formatMm(y) })}
      />
      <Picture view={views.oblique} label={t('obliquely')} caption={t('from the front right')} />
    </div>
  );
}
