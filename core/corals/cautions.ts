import { sentencesOf } from '../words/sentence.ts';
import { published, recalled, said, type Statement } from './basis.ts';

/** To be shown for every entry whose `hazard.palytoxin` is true, before anything else. */
export const palytoxinCaution: Statement = said(
  'May hold palytoxin. Wear gloves and eye protection. Never boil, bake, steam, microwave, saw, scrub dry or pressure-wash rock with zoanthids. Keep it wet, out of cuts and eyes and away from pets. Ill after handling: fresh air, call a doctor or a poison centre and say palytoxin',
  published('CDC2015'),
  published('Pelin2016'),
  published('Schulz2019'),
);

/** The same as lines: what it may hold and the gloves, what is never done, where it is kept from, and help. */
export function palytoxinLines(): readonly string[] {
  const [may, gloves, ...others] = sentencesOf(`${palytoxinCaution.text}.`);
  return [`${may} ${gloves}`, ...others];
}

/**
 * How what zoanthids leave behind is made harmless. Guidance of public health after the published cases, recalled and not
 * read again; living coral and tanks are never bleached.
 */
export const palytoxinCleaning: Statement = said(
  'Afterwards, on surfaces, tools and dead rock: 1 part fresh household bleach to about 10 of cold water, 30 minutes, then rinse (public-health guidance, from memory)',
  recalled('public-health guidance on palytoxin'),
);
