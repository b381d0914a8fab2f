/**
 * A laser's key: its tint and hatching, the same as in the plan. The number stands beside it, never colour alone.
 */
import { hatchBackground, laserStyle } from '../../export/plan/palette';
import { useTheme } from '../../canvas/theme';

export function Swatch({ laser, size = 16 }: { readonly laser: number; readonly size?: number }) {
  const theme = useTheme();
  return (
    <span
      className="swatch"
      aria-hidden="true"
      style={{
        width: size,
        height: size,
        background: hatchBackground(laser, theme),
        border: `1px solid ${laserStyle(laser, theme).stroke}`,
      }}
    />
  );
}
