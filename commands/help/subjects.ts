/** What each first word of a command is about, at most 100 characters. */
export const subjects: Readonly<Record<string, string>> = {
  dose: 'How much of which compound over how many days, daily use, limewater, one salt for another',
  waterchange: 'How much water to change, how often, and when it is the wrong tool',
  water: 'When a level gets somewhere, how fast it may, two kits, warm water, a spill, an accident',
  salinity: 'Every scale, whether an instrument can be believed, raise and lower by a day plan',
  light: 'Daily light, lamp setting, raise plan, light for a coral, readings of a meter',
  tank: 'Your tanks: net water, kind, habits, own targets',
  coral: 'The guide to corals, and where yours stand: sting, light, growth, a map',
  log: 'Your readings and what you added: tables, trends, files',
  remind: 'What is due, at your own clock time; a sitter while you are away',
  mydata: 'Everything kept of you: your copy, your erasure',
  desk: 'For those who manage the server: units, channels, the helpers',
};
