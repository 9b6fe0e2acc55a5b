/** When, how often and how fast. */
export const times = {
  now: `now currently atm at_the_moment as_we_speak this_minute this_second still`,
  justNow: `just_now just_happened a_minute_ago minutes_ago seconds_ago moments_ago an_hour_ago hour_ago`,
  today: `today 2day this_morning this_afternoon this_evening tonight earlier hours_ago`,
  lastNight: `last_night overnight woke_up woke_up_to yesterday yesturday`,
  overnight: `overnight over_night in_one_night in_a_night`,
  sameHour: `same_hour same_time same_time_of_day at_the_same_hour`,
  daysAgo: `days_ago day_ago couple_of_days few_days other_day this_week recently lately`,
  weeksAgo: `week_ago weeks_ago last_week couple_weeks fortnight_ago month_ago last_month months_ago`,
  longAgo: `long_ago years_ago year_ago last_year ages_ago once_upon used_to back_then previously formerly in_the_past`,
  soFar: `so_far only_got only_at only_reached only_reads got_to up_to_now still_only came_out`,
  always: `always constantly every_time all_the_time continuously nonstop non_stop permanently 24_7`,
  often: `often frequently usually normally most_days keeps keep_getting again_and_again repeatedly`,
  sometimes: `sometimes occasionally now_and_then on_and_off once_in_a_while rarely seldom intermittently`,
  suddenly: `suddenly sudden out_of_nowhere out_of_the_blue instantly immediately quickly fast rapidly rapid`,
  slowly: `slowly slow gradually gradual over_time little_by_little bit_by_bit steadily gently`,
  night: `night nights nighttime nightly lights_off after_dark midnight moonlight`,
  moon: `moon full_moon moonlight moonlights lunar`,
  day: `daytime by_day lights_on midday noon`,
  morning: `morning mornings dawn sunrise sunup first_light breakfast when_i_get_up when_i_wake before_lights_on
    before_the_lights_come_on`,
  evening: `evening evenings dusk sunset afternoon bedtime at_tea teatime by_tea tea_time suppertime at_supper lights_out
    lights_off_time before_lights_off`,
  soon: `soon tomorrow tommorow tomorow shortly later next_week next_month this_weekend upcoming coming_week about_to
    going_to gonna`,
  weekday: `monday tuesday wednesday thursday friday saturday sunday weekend weekends weekday mondays sundays
    saturdays`,
  month: `january february april june july august september october november december`,
  season: `summer winter spring autumn season seasonal christmas`,
  first: `first firstly start begin beginning initially originally`,
  afterwards: `then afterwards next eventually finally`,
  before: `before beforehand prior until till`,
  after: `after since following`,
  during: `during while meanwhile whilst throughout`,
  duration: `for_days for_weeks for_months for_hours all_day all_night all_week`,
  atOnce: `all_at_once at_once in_one_go in_one_shot right_now tonight tonite`,
  newAge: `new young fresh newly just_started week_old`,
  clockChange: `clocks clock_goes clock_change clock_changes daylight_saving daylight_savings dst time_change
    summer_time winter_time`,
  oldAge: `old mature established ancient expired out_of_date`,
} as const;
