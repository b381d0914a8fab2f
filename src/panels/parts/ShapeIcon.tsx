/**
 * A shape as a small line drawing.
 */
import type { Shape } from '../../layout/types';
import { shapePicture } from './shapePath';

interface ShapeIconProps {
  readonly shape: Shape;
  readonly size: number;
}

export function ShapeIcon({ shape, size }: ShapeIconProps) {
  const { path, viewBox } = shapePicture(shape);
  return (
    <svg className="shape-icon" width={size} height={size} viewBox={viewBox} aria-hidden="true">
      <path d={path} fillRule="evenodd" vectorEffect="non-scaling-stroke" />
    </svg>
  );
}
