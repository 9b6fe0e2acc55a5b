import { coralSources } from './corals/sources.ts';
import type { Source } from './source.ts';

/** Every source cited by `core`: code to full reference. An answer carries codes, a renderer prints titles. */
export const sources = {
  iupac21: {
    title:
      'Prohaska T. et al. 2022. Standard atomic weights of the elements 2021 (IUPAC). Pure Appl. Chem. 94:573-600',
    kind: 'standard',
  },
  si19: { title: 'The International System of Units, SI Brochure, 9th ed. 2019', kind: 'standard' },
  dkh: {
    title: 'German degree: 10 mg CaO per litre; with the IUPAC 2021 weights 1 meq/L = 2.804 dKH',
    kind: 'standard',
  },
  fm83: {
    title:
      'Fofonoff N.P. & Millard R.C. 1983. Algorithms for computation of fundamental properties of seawater. Unesco Tech. Pap. Mar. Sci. 44 (PSS-78, EOS-80)',
    kind: 'published',
  },
  m08: {
    title:
      'Millero F.J. et al. 2008. The composition of Standard Seawater and the Reference-Composition Salinity Scale. Deep-Sea Res. I 55:50-72',
    kind: 'published',
  },
  qf95: {
    title:
      'Quan X. & Fry E.S. 1995. Empirical equation for the index of refraction of seawater. Appl. Opt. 34:3477-3480',
    kind: 'published',
  },
  dsc07: {
    title:
      'Dickson A.G., Sabine C.L., Christian J.R. 2007. Guide to best practices for ocean CO2 measurements. PICES Spec. Publ. 3, ch. 5',
    kind: 'published',
  },
  lueker00: {
    title: 'Lueker T.J., Dickson A.G., Keeling C.D. 2000. Mar. Chem. 70:105-119 (K1 and K2)',
    kind: 'published',
  },
  mucci83: { title: 'Mucci A. 1983. Am. J. Sci. 283:780-799 (aragonite and calcite)', kind: 'published' },
  upp74: { title: 'Uppstrom L.R. 1974. Deep-Sea Res. 21:161-162 (boron)', kind: 'published' },
  bates56: {
    title:
      'Bates R.G., Bower V.E., Smith E.R. 1956. Calcium hydroxide as a highly alkaline pH standard. J. Res. Natl. Bur. Stand. 56:305-312',
    kind: 'published',
  },
  chemtab: {
    title:
      'Table of solubility of inorganic solids in water (Polish-language chemistry reference, table 04-26)',
    kind: 'published',
  },
  cie: {
    title: 'CIE 018:2019 / ISO 23539: photopic luminous efficiency V(lambda), CIE 1924',
    kind: 'standard',
  },
  cie15: {
    title:
      'CIE 015:2018. Colorimetry, 4th ed. (illuminant spectra; their factors are worked out here from V(lambda))',
    kind: 'standard',
  },
  th83: {
    title:
      'Thimijan R.W. & Heins R.D. 1983. Photometric, radiometric, and quantum light units of measure. HortScience 18:818-822 (factors through secondary listings)',
    kind: 'published',
  },
  dli: {
    title:
      'Daily light integral: Torres A.P. & Lopez R.G., Purdue Extension HO-238-W; Faust & Logan 2018, HortScience 53:1250-1257',
    kind: 'published',
  },
  ghs: { title: 'UN GHS hazard statements from generic safety data sheets', kind: 'published' },
  mixing: { title: 'Mass balance of a well-mixed tank', kind: 'project' },
  mp81: {
    title:
      'Millero F.J. & Poisson A. 1981. International one-atmosphere equation of state of seawater. Deep-Sea Res. 28A:625-629',
    kind: 'published',
  },
  cs80: {
    title:
      'Culkin F. & Smith N.D. 1980. Conductivity of Standard Seawater, 42.914 mS/cm at 15 deg C. IEEE J. Oceanic Eng. OE-5:22-23 (details from memory)',
    kind: 'published',
  },
  teos10: {
    title:
      'IOC, SCOR, IAPSO 2010. The international thermodynamic equation of seawater - 2010. Manuals and Guides 56',
    kind: 'standard',
  },
  zw01: {
    title:
      'Zeebe R.E. & Wolf-Gladrow D. 2001. CO2 in Seawater, Appendix A (solubility of aragonite and calcite)',
    kind: 'published',
  },
  pf87: { title: 'Perez F.F. & Fraga F. 1987. Mar. Chem. 21:161-168 (hydrogen fluoride)', kind: 'published' },
  dr79: {
    title: 'Dickson A.G. & Riley J.P. 1979. Mar. Chem. 7:89-99 (hydrogen fluoride)',
    kind: 'published',
  },
  tak82: {
    title:
      'Takahashi T. et al. 1982. GEOSECS Pacific Expedition, vol. 3, ch. 3 (pH on the NBS scale; details from memory)',
    kind: 'published',
  },
  lee10: { title: 'Lee K. et al. 2010. Geochim. Cosmochim. Acta 74:1801-1811 (boron)', kind: 'published' },
  pyco2sys: {
    title:
      'Humphreys M.P. et al. 2022. PyCO2SYS v1.8: marine carbonate system calculations. Geosci. Model Dev. 15:15-43',
    kind: 'published',
  },
  geometry: { title: 'Plane and solid geometry: litres from lengths, 1 L = 1000 cm3', kind: 'project' },
  gg92: {
    title:
      'Garcia H.E. & Gordon L.I. 1992. Oxygen solubility in seawater: better fitting equations. Limnol. Oceanogr. 37:1307-1312',
    kind: 'published',
  },
  sen68: {
    title:
      'Sen P.K. 1968. Estimates of the regression coefficient based on Kendall’s tau. J. Am. Stat. Assoc. 63:1379-1389 (from memory)',
    kind: 'memory',
  },
  nist: {
    title:
      'NIST/SEMATECH e-Handbook of Statistical Methods (t table) and Statistical Reference Datasets (Norris)',
    kind: 'published',
  },
  redfield: {
    title:
      'Redfield A.C., Ketchum B.H., Richards F.A. 1963. The influence of organisms on the composition of sea-water (ratio read in a public code that quotes it)',
    kind: 'published',
  },
  practice: { title: 'Common practice, no source', kind: 'practice' },
  memory: { title: 'From memory, no source seen', kind: 'memory' },
  ...coralSources,
} as const satisfies Record<string, Source>;

export type SourceCode = keyof typeof sources;
