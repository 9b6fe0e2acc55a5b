/**
 * Totals of the minor acid-base systems and of calcium in seawater, mol/kg, in proportion to practical salinity by the
 * chlorinity Cl = S / 1.80655.
 *
 * Source: dsc07 ch. 5; borate upp74 0.000232/10.811, sulfate 0.14/96.062 and fluoride 0.000067/18.998 through
 * the guide; calcium 0.02128/40.087 (Riley & Tongudai 1967 through pyco2sys). Range S 5 to 45 (not checked here).
 * Check [dsc07] at S 35, umol/kg: borate 415.758, sulfate 28235.43, fluoride 68.326, calcium 10284.57.
 * Doubt: a newer borate (lee10, 432.6) is 4 % higher; at one alkalinity and pH that lowers DIC by about
 * 4 umol/kg. In a tank borate and calcium need not follow salinity.
 */
export interface SeawaterTotals {
  readonly borate: number;
  readonly sulfate: number;
  readonly fluoride: number;
  readonly calcium: number;
}

export function seawaterTotals(practicalSalinity: number): SeawaterTotals {
  const chlorinity = practicalSalinity / 1.80655;
  return {
    borate: (0.000232 / 10.811) * chlorinity,
    sulfate: (0.14 / 96.062) * chlorinity,
    fluoride: (0.000067 / 18.998) * chlorinity,
    calcium: (0.02128 / 40.087) * chlorinity,
  };
}
