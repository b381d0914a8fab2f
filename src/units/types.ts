/**
 * The units every other folder speaks. A quantity is a number that remembers its unit: Mm does not pass where
 * Seconds is wanted, while a bare number (the outcome of arithmetic) passes everywhere, so formulas stay readable.
 * Millimetres, seconds, watts, degrees counter-clockwise from +x.
 */
declare const unit: unique symbol;
type Quantity<Name extends string> = number & { readonly [unit]?: Name };

export type Mm = Quantity<'mm'>;
export type Mm2 = Quantity<'mm2'>;
export type Mm3 = Quantity<'mm3'>;
export type Cm3 = Quantity<'cm3'>;
export type Litres = Quantity<'l'>;
export type Seconds = Quantity<'s'>;
export type Milliseconds = Quantity<'ms'>;
export type Hours = Quantity<'h'>;
export type Degrees = Quantity<'deg'>;
export type Radians = Quantity<'rad'>;
export type Watts = Quantity<'W'>;
export type Percent = Quantity<'pct'>;
export type MmPerSecond = Quantity<'mm/s'>;
/** Screen pixels (CSS px). */
export type Px = Quantity<'px'>;

/** A place on the platform: origin at its centre, +x right, +y to the back as seen from the front (ISO 17295). */
export interface PlatePoint {
  readonly x: Mm;
  readonly y: Mm;
}
/** A place on the screen: origin top-left of the canvas, +y down. */
export interface ScreenPoint {
  readonly left: Px;
  readonly top: Px;
}
