/** The longest message that is read to its end, wherever it comes from, characters. As long as Discord lets one be. */
export const MAX_MESSAGE_LENGTH = 4000;
