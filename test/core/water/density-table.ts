/** EOS-80 check values of Fofonoff & Millard 1983 (Unesco Tech. Pap. Mar. Sci. 44), surface; rho in kg/m3. */
export const published = [
  { s: 0, t68: 5, rho: 999.96675, source: 'fm83 p.19 / mp81' },
  { s: 0, t68: 25, rho: 997.04796, source: 'fm83 p.19 / mp81' },
  { s: 35, t68: 5, rho: 1027.67547, source: 'fm83 p.19 / mp81' },
  { s: 35, t68: 25, rho: 1023.34306, source: 'fm83 p.19 / mp81' },
] as const;

/** The same report: rho - 1000. */
export const anomaly = [
  { s: 0, t68: 0, sigma: -0.1574, source: 'fm83 p.23' },
  { s: 0, t68: 10, sigma: -0.2979, source: 'fm83 p.23' },
  { s: 0, t68: 20, sigma: -1.7937, source: 'fm83 p.23' },
  { s: 0, t68: 30, sigma: -4.3489, source: 'fm83 p.23' },
  { s: 0, t68: 40, sigma: -7.7796, source: 'fm83 p.23' },
  { s: 30, t68: 0, sigma: 24.0716, source: 'fm83 p.23' },
  { s: 30, t68: 10, sigma: 23.0511, source: 'fm83 p.23' },
  { s: 30, t68: 20, sigma: 20.9539, source: 'fm83 p.23' },
  { s: 30, t68: 30, sigma: 17.9854, source: 'fm83 p.23' },
  { s: 30, t68: 40, sigma: 14.2781, source: 'fm83 p.23' },
  { s: 35, t68: 0, sigma: 28.1063, source: 'fm83 p.23' },
  { s: 35, t68: 10, sigma: 26.9524, source: 'fm83 p.23' },
  { s: 35, t68: 20, sigma: 24.763, source: 'fm83 p.23' },
  { s: 35, t68: 30, sigma: 21.7286, source: 'fm83 p.23' },
  { s: 35, t68: 40, sigma: 17.9731, source: 'fm83 p.23' },
  { s: 40, t68: 0, sigma: 32.1471, source: 'fm83 p.23' },
  { s: 40, t68: 10, sigma: 30.8624, source: 'fm83 p.23' },
  { s: 40, t68: 20, sigma: 28.5825, source: 'fm83 p.23' },
  { s: 40, t68: 30, sigma: 25.4829, source: 'fm83 p.23' },
  { s: 40, t68: 40, sigma: 21.6788, source: 'fm83 p.23' },
] as const;

/** Reef range on ITS-90: EOS-80 and TEOS-10 computed with GSW-Python 3.6.16. */
export const reefRange = [
  { s: 30, tempC: 20, eos80: 1020.9526, teos10: 1020.958 },
  { s: 30, tempC: 24, eos80: 1019.8612, teos10: 1019.8649 },
  { s: 30, tempC: 25, eos80: 1019.5677, teos10: 1019.5709 },
  { s: 30, tempC: 26, eos80: 1019.2662, teos10: 1019.2688 },
  { s: 30, tempC: 28, eos80: 1018.6399, teos10: 1018.6412 },
  { s: 33, tempC: 20, eos80: 1023.2369, teos10: 1023.2419 },
  { s: 33, tempC: 24, eos80: 1022.128, teos10: 1022.1315 },
  { s: 33, tempC: 25, eos80: 1021.8306, teos10: 1021.8335 },
  { s: 33, tempC: 26, eos80: 1021.5252, teos10: 1021.5276 },
  { s: 33, tempC: 28, eos80: 1020.8915, teos10: 1020.8927 },
  { s: 35, tempC: 20, eos80: 1024.7617, teos10: 1024.766 },
  { s: 35, tempC: 24, eos80: 1023.6414, teos10: 1023.6442 },
  { s: 35, tempC: 25, eos80: 1023.3412, teos10: 1023.3436 },
  { s: 35, tempC: 26, eos80: 1023.0333, teos10: 1023.0352 },
  { s: 35, tempC: 28, eos80: 1022.3946, teos10: 1022.3955 },
  { s: 38, tempC: 20, eos80: 1027.0521, teos10: 1027.0545 },
  { s: 38, tempC: 24, eos80: 1025.9146, teos10: 1025.9158 },
  { s: 38, tempC: 25, eos80: 1025.6105, teos10: 1025.6113 },
  { s: 38, tempC: 26, eos80: 1025.2988, teos10: 1025.2991 },
  { s: 38, tempC: 28, eos80: 1024.6527, teos10: 1024.6522 },
] as const;
