/** How anyone may begin: questions that are answered as they stand. */
export const beginnings = [
  'raise alk 7.2 to 8.4 in 75 gal with soda ash',
  'nitrate 80, 55 gal, 20 % a week, how many to 10',
  'can a torch and a hammer sit next to each other? got 4 inches between',
] as const;
