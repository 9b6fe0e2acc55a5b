/** What the member of the demo types: a week in the club, one line a question. */
export const talk: readonly string[] = [
  '/tank show',
  '/log show most:5',
  '/log trend of:alkalinity, calcium, nitrate, phosphate over:120 days',
  '/dose use of:alkalinity',
  'raise alk 7.9 to 8.6 with soda ash',
  '/log add readings:430/8.3/1320 sg 1.0262 25.4c no3 9 po4 .05 note:after the water change',
  '/checkup',
  'nitrate 20, 15% a week, how many to 8',
  '/coral check',
  '/coral map',
  'how much light for a new acan',
  'my zoas wont open since yesterday',
  '/tank share',
  '/mydata export',
];
