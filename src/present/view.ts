/** How a reader wants to read: her unit and her terms. */
import type { LengthUnit } from '../fit/units.ts';
import type { Dialect } from './terms.ts';

export interface View {
  readonly unit: LengthUnit;
  readonly dialect: Dialect;
}
