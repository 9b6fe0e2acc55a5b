/** Share of its charge that reaches the pump through an inverter. Common practice, no source. */
const EFFICIENCY = 0.8;
/** Share of the capacity on its label that a battery gives without harm. Common practice, no source. */
const USABLE = { lithium: 0.9, lead: 0.5 } as const;
/** What a battery of so many Ah is taken to give, V, unless it says otherwise; own choice. */
const VOLTS = 12;

export type Battery = keyof typeof USABLE;

/** Watt-hours a load takes out of a battery, W and h. Check: 40 W for 8 h, 400. */
export function wattHours(watts: number, hours: number): number {
  return (watts * hours) / EFFICIENCY;
}

/** Ah on the label of a 12 V battery that gives so many watt-hours. Check: 400 Wh: lead 67, lithium 37. */
export function ampHours(wh: number, battery: Battery): number {
  return wh / (VOLTS * USABLE[battery]);
}

/** Hours a battery of so many Wh on its label runs a load, W. Check: 1200 Wh and 15 W: lead 32, lithium 57.6. */
export function runHours(labelWh: number, watts: number, battery: Battery): number {
  return (labelWh * USABLE[battery] * EFFICIENCY) / watts;
}

/** Wh of so many Ah at 12 V. */
export function wattHoursOf(ah: number): number {
  return ah * VOLTS;
}
