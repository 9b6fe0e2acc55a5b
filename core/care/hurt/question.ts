/** The word of the option that leads here. */
export const PERSON_HURT = 'person hurt';

/** Signs that call for the emergency number whatever happened. */
export const GRAVE = 'faint, numb, short of breath or bleeding hard';

/** Asked where the words do not say what happened; what holds for every hurt stands with it. */
export const HURT_QUESTION = `A person first: call your emergency number now if anyone is ${GRAVE}. What happened?`;

export const FOR_EVERY_HURT = [
  'Danger away first: mains off at the breaker before you touch them or the water; out of smoke and fumes.',
  'The emergency number also for a child, a swelling face, chest pain, or when you are not sure.',
  'Swallowed, breathed in, stung, or in the eye: the poison centre knows what to do, label in hand.',
] as const;
