/**
 * A konva layer that one function paints. It repaints when it is given another function, at once and not a frame later,
 * so that canvas and readout change in the same frame. Nothing on it listens: what stands under the pointer is
 * answered by the geometry itself. Memoised, since konva also redraws whatever react hands it anew. With `keeps` the
 * canvas is handed on as it stands and the function clears what it paints over.
 */
import { memo, useCallback, useLayoutEffect, useRef } from 'react';
import type { Context } from 'konva/lib/Context';
import type { Layer as KonvaLayer } from 'konva/lib/Layer';
import { Layer, Shape } from 'react-konva/lib/ReactKonvaCore';
import type { Ctx } from './draw/pen';

interface PaintLayerProps {
  readonly paint: (ctx: Ctx) => void;
  readonly keeps?: boolean;
  /** Device pixels per CSS px. */
  readonly ratio: number;
  /** What the painter throws: konva's own tree would only log it and go blank. */
  onFault(error: unknown): void;
}

export const PaintLayer = memo(({ paint, keeps = false, ratio, onFault }: PaintLayerProps) => {
  const layer = useRef<KonvaLayer>(null);
  const latest = useRef(paint);
  useLayoutEffect(() => {
    const canvas = layer.current?.getCanvas();
    if (canvas && canvas.getPixelRatio() !== ratio) canvas.setPixelRatio(ratio);
  }, [ratio]);
  useLayoutEffect(() => {
    latest.current = paint;
    layer.current?.draw();
  }, [paint, ratio]);
  const scene = useCallback(
    (context: Context) => {
      try {
        latest.current(context._context);
      } catch (error) {
        onFault(error);
      }
    },
    [onFault],
  );
  return (
    <Layer ref={layer} listening={false} clearBeforeDraw={!keeps}>
      <Shape sceneFunc={scene} listening={false} perfectDrawEnabled={false} />
    </Layer>
  );
});
