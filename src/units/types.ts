/**
 * The units every other folder speaks. A quantity is a number that remembers its unit: Mm does not pass where
 * Seconds is wanted, while a bare number (the outcome of arithmetic) passes everywhere, so formulas stay readable.
 * Millimetres, seconds, watts, degrees counter-clockwise from +x.
 */
declare const unit: unique symbol;
type Quantity<Name extends string> = number & { readonly [unit]?: Name };

/** Millimetres: platform, parts and layers alike. */
export type Mm = Quantity<'mm'>;
/** Square millimetres: sections, scan areas. */
export type Mm2 = Quantity<'mm2'>;
/** Cubic millimetres: volumes of shapes. */
export type Mm3 = Quantity<'mm3'>;
/** Cubic centimetres: exposed volume of a build. */
export type Cm3 = Quantity<'cm3'>;
/** Litres: powder. */
export type Litres = Quantity<'l'>;
/** Seconds: within a layer. */
export type Seconds = Quantity<'s'>;
/** Milliseconds: gaps between vectors. */
export type Milliseconds = Quantity<'ms'>;
/** Hours: over a build. */
export type Hours = Quantity<'h'>;
/** Degrees, counter-clockwise from +x where they are a direction. */
export type Degrees = Quantity<'deg'>;
/** Radians: within formulas only. */
export type Radians = Quantity<'rad'>;
/** Watts: laser power. */
export type Watts = Quantity<'W'>;
/** Hundredths: 25 means a quarter. */
export type Percent = Quantity<'pct'>;
/** Millimetres per second: scan speeds. */
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
