import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';

const HURT = [
  String.raw`(?:in|into|got in) (?:my|his|her|their|the) (?:eyes?|mouth|face)`,
  'swallow(?:ed|s)?',
  'drank',
  'drunk',
  'inhaled',
  'breathed in',
  String.raw`burn(?:s|ed|t|ing)? (?:my|his|her|their|on (?:my|the)) (?:skin|hands?|fingers?|arms?|eyes?|throat)`,
  'electrocuted',
  'electric shock',
  'got shocked',
  'numb',
  'metallic taste',
  'cannot breathe',
  "can't breathe",
];

/** Somebody is hurt: people first, no arithmetic. General first aid of safety data sheets; a doctor decides. */
export const hurtIntent: Intent = (heard) => {
  if (!says(heard, ...HURT)) return undefined;
  return answer({
    headline:
      'A person first: call your emergency number or poison centre now if anyone is hurt, short of breath, numb or unwell.',
    steps: [
      'Electricity: switch off at the breaker before you touch the person or the water.',
      'In the eye: rinse with plenty of clean water at once, lids open, take contact lenses out, keep rinsing for many minutes, and get medical help.',
      'Swallowed: rinse the mouth, do not make them vomit, and call the poison centre with the label in hand.',
      'On the skin: take off what is wet with it and rinse with plenty of water.',
      'Breathed in, or ill after handling zoanthids or rock (metallic taste, numbness, fever, cough): leave the room, get fresh air, and tell the doctor it may be palytoxin.',
    ],
    cautions: [
      'I am no doctor. Do not wait for an answer here; bring the product label and say what was handled.',
    ],
    sources: ['ghs', 'practice'],
  });
};
