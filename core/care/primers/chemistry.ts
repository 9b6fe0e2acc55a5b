import type { Primer } from './primer.ts';

/** Numbers: 7.1 mg/L per dKH from iupac21; seawater 6.6 dKH, 422, 1314 from m08 with fm83; ranges are common practice. */
export const chemistryCards: readonly Primer[] = [
  {
    id: 'alkalinity and calcium',
    names: ['alkalinity', 'alk', 'calcium', 'kh', 'dkh', 'two part', 'dosing'],
    headline:
      'Corals build skeleton from alkalinity and calcium together: for each dKH used, about 7 mg/L of calcium goes.',
    points: [
      ['Alkalinity', 'how much acid the water can take, read in dKH; it falls first, so test it most'],
      ['Usual range', '7 to 11 dKH and 400 to 450 mg/L (common practice); natural seawater has 6.6 and 422'],
      ['Steady beats high', 'the same number each day counts for more than which number'],
      ['Pace', 'at most 1 dKH and 50 mg/L a day upward (common practice)'],
    ],
    steps: [
      'Check salinity first: low salinity makes both read low.',
      'Measure the daily use with two tests some days apart, then dose that.',
      'Add the two parts at different times or places: mixed strong, they turn to chalk.',
    ],
    see: ['magnesium', 'limewater', 'units'],
    sources: ['iupac21', 'm08', 'fm83', 'practice'],
  },
  {
    id: 'magnesium',
    names: ['mag', 'mg'],
    headline:
      'Magnesium keeps calcium and alkalinity from falling out as chalk; it moves slowly, so test it monthly.',
    points: [
      ['Usual range', '1250 to 1400 mg/L (common practice); seawater at 35 ppt has 1314'],
      ['When it matters', 'when calcium and alkalinity will not hold although you dose them'],
      ['Two salts', 'magnesium chloride is 12 % magnesium and Epsom salt 10 %, by weight'],
      ['Pace', 'at most 100 mg/L a day (common practice)'],
    ],
    steps: [
      'Test salinity and magnesium again before a large dose.',
      'Dose in portions, dissolved in fresh (RO) water.',
    ],
    see: ['alkalinity and calcium', 'salinity', 'test kits'],
    sources: ['m08', 'fm83', 'iupac21', 'practice'],
  },
  {
    id: 'pH',
    names: ['ph', 'low ph'],
    headline:
      'pH mostly tells how much CO2 is in the air of the room; it swings every day and is rarely worth chasing.',
    points: [
      ['Usual range', '7.8 to 8.4, lowest at dawn, highest at dusk (common practice)'],
      ['What moves it', 'people and closed windows lower it; fresh air, algae in light and lime raise it'],
      ['Not the same', 'normal alkalinity does not promise a high pH'],
      ['Probe', 'drifts, so calibrate it before you believe 7.6'],
    ],
    steps: [
      'Stir a cup of tank water outdoors for an hour. If its pH rises, air the room.',
      'Never dose for pH alone: watch alkalinity.',
    ],
    cautions: ['Limewater and soda ash raise pH fast: drip, and stop at 8.5.'],
    see: ['alkalinity and calcium', 'limewater', 'test kits'],
    sources: ['dsc07', 'lueker00', 'practice'],
  },
  {
    id: 'nutrients',
    names: ['nitrate', 'phosphate', 'no3', 'po4', 'nitrates', 'phosphates'],
    headline:
      'Corals and algae both need some nitrate and phosphate: aim for a little of each, never for zero.',
    points: [
      ['Usual range', 'nitrate 2 to 20 mg/L, phosphate 0.03 to 0.1 (common practice)'],
      ['Zero on a kit', 'below its limit, not none; pale corals and slimes often follow'],
      ['Too high', 'brown corals and algae: feed less, export more, change water'],
      ['P or PO4', 'phosphorus x 3.07 is phosphate; nitrogen x 4.43 is nitrate'],
    ],
    steps: [
      'Move slowly: halving in one change is plenty.',
      'Find the source before you add media.',
      'At zero, feed more before you dose.',
    ],
    see: ['feeding', 'water changes', 'units'],
    sources: ['iupac21', 'practice'],
  },
  {
    id: 'limewater',
    names: ['kalk', 'kalkwasser', 'lime water', 'lime'],
    headline:
      'Limewater is calcium hydroxide in fresh water: it replaces evaporation and gives alkalinity and calcium in the ratio corals use.',
    points: [
      ['Strength', 'at most about 1.5 g in a litre, 41 meq/L at 25 °C; the rest settles'],
      ['Warm water', 'holds less, not more'],
      ['Limit', 'a tank that uses more than its evaporation can carry needs another way too'],
    ],
    steps: [
      'Start with less than worked out, and test alkalinity daily for a week.',
      'Let it settle, use the clear part, keep a lid on.',
      'Drip slowly, best at night. Stop at pH 8.5.',
    ],
    cautions: [
      'Caustic: eye protection, gloves, no dust; keep from children. In the eye: rinse long, get medical help.',
    ],
    see: ['alkalinity and calcium', 'top-off', 'pH'],
    sources: ['bates56', 'lange', 'ghs', 'practice'],
  },
  {
    id: 'test kits',
    names: ['test kit', 'tests', 'testing', 'kits'],
    headline:
      'A kit tells less than its last digit: believe a change only when it is larger than what the kit can tell apart.',
    points: [
      [
        'Told apart',
        'about 0.3 dKH, 10 mg/L calcium, 30 magnesium, 2 nitrate, 0.03 phosphate (common practice)',
      ],
      ['Two kits', 'differ by more than either; stay with one and watch its trend'],
      ['Odd reading', 'test again before you act; then check age, shaking and sample size'],
    ],
    steps: [
      'Rinse with tank water, fill to the line at eye level.',
      'Test at the same hour.',
      'Now and then test a standard, or fresh salt water of known value.',
    ],
    cautions: ['Reagents can be acid or poisonous: follow their leaflet, keep from children.'],
    see: ['units', 'salinity', 'alkalinity and calcium'],
    sources: ['practice'],
  },
];
