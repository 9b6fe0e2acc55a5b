import { published, said, type Statement } from './basis.ts';

/** To be shown for every entry whose `hazard.palytoxin` is true, before anything else. */
export const palytoxinCaution: Statement = said(
  'May hold palytoxin. Wear gloves and eye protection. Never scrub dry, boil, microwave, bleach or pressure-wash rock with zoanthids. Keep it out of cuts and eyes and away from pets. Ill after handling: stop, get fresh air, call a doctor or a poison centre and say palytoxin',
  published('CDC2015'),
  published('Pelin2016'),
  published('Schulz2019'),
);
