/** What a keeper does. */
export const deeds = {
  movesHouse: `moving_house move_house move_tank moving_tank moved_house relocating relocate new_apartment transport
    transporting`,
  holiday: `holiday holidays vacation vacations away trip out_of_town travelling traveling`,
  buys: `buy buys buying bought purchase purchased ordered ordering order shopping arrived shipped shipping`,
  sells: `sell selling sold trade traded trading`,
  gives: `give_away gave giving rehome rehoming rehomed donate gift returned_to_shop`,
  adds: `added put_in placed introduced planted`,
  checks: `check_my judge review rate_my check_all`,
  maps: `map draw_map coral_map`,
  unlists: `take_off take_out_of take_out off_my_list off_the_list strike cross_off remove_from`,
  moves: `moved shifted swapped_places relocated_it repositioned moving_it`,
  discards: `binned tossed chucked dumped threw_away thrown_away tossed_out rip lost gone passed_on passed_away`,
  contains: `stop_it halt hold_it contain hold_back hold_it_back keep_in_check trim_back kill_off smother smothers smothering
    smothered get_rid_of remove removing`,
  frags: `fragging fragged cut_a_frag cut_it cut_off sawed sawing propagate propagating`,
  glues: `glued gluing mounted mount mounting attach attached stick_down`,
  feeds: `feed feeding fed feeds overfed overfeeding overfeed overfeeds`,
  fasts: `skip_feeding fasting stop_feeding underfed underfeeding`,
  tests: `test testing tested tests retest retested measured measuring reading readings result results`,
  doses: `dose dosing dosed doses dosage add_alk supplement supplementing redose`,
  dosesNothing: `without_dosing not_dosing no_dosing dont_dose dosing_nothing dose_nothing never_dose never_dosed
    havent_dosed didnt_dose havent_been_dosing nothing_dosed no_doser without_a_doser dont_have_a_doser
    not_dosed without_any_dosing undosed do_not_dose not_dose not_dose_at_all not_dose_anything dose_none add_none
    add_nothing added_nothing added_none nothing_added nothing_has_been_added nothing_was_added nothing_went_in
    never_add havent_added_a_drop havent_added_anything havent_added_any_of_it no_2part no_two_part no_2_part
    no_additives no_kalk no_supplements dont_add_any dont_add_anything put_nothing_in put_none_in`,
  feedsNoMore: `no_extra_feeding no_extra_food no_more_food_than not_feeding_more not_fed_more feeding_is_the_same
    feeding_the_same feeding_hasnt_changed same_food same_feeding no_new_fish not_overfeeding`,
  topsOffNothing: `ato_off ato_is_off ato_was_off ato_unplugged top_off_is_off topoff_is_off no_ato without_an_ato
    dont_have_an_ato no_auto_top_off`,
  changesNothing: `no_water_changes no_water_change without_water_changes without_a_water_change no_wc no_wcs
    no_changes havent_changed_water`,
  stopsDosing: `dosing_off doser_off stop_dosing stopped_dosing no_longer_dosing dosing_stopped`,
  swaps: `instead substitute substituted substituting replace replaced replacing in_place_of`,
  changesWater: `water_change waterchange water_changes wc wcs pwc big_water_change changed_water auto_water_change
    awc change_water changes_water changing_water change_the_water change_any_water changes_of_water`,
  topsOff: `top_off topped_off topoff topping_off top_up topped_up evaporation evaporated evaporates`,
  evaporates: `evaporation evaporated evaporates evaporating evaporate evap evaps`,
  mixesSalt: `mix_salt mixing mixed new_saltwater fresh_mix`,
  cleans: `clean cleaned cleaning wiped wiping wash washed washing vacuumed`,
  scrapes: `scrape scraped scraping scrub scrubbed scrubbing`,
  soaks: `soak soaked soaking descale descaled descaling`,
  boils: `boil boiled boiling microwaved bake_rock baked_rock rock_in_oven heated_rock`,
  aquascapes: `aquascape aquascaping rescape rescaped rearranged moved_rocks stacked drilled_rock`,
  siphons: `stirred_sand stirred_up siphoned_sand vacuumed_sand disturbed_sand`,
  setsUp: `set_up setup setting_up new_tank newbie_tank started_tank first_tank build building installed installing
    install upgrade upgrading upgraded`,
  tearsDown: `tear_down teardown tore_down shutting_down breaking_down getting_out`,
  dips: `dip dips dipping dipped bath baths`,
  quarantines: `quarantine quarantined quarantining quarentine isolate isolated isolating fallow`,
  acclimates: `acclimate acclimating acclimated acclimatise acclimation aclimate floated_bag`,
  treats: `treat treated treating treatment medicate medicated medicating`,
  euthanises: `euthanize euthanise euthanasia put_down put_it_out_of_misery clove_oil`,
  blacksOut: `blackout lights_out three_days_dark`,
  catches: `catch caught catching netted_him remove_fish get_him_out`,
  calculates: `calculate calculator calculation work_out compute figure_out`,
  reminds: `remind reminder reminders notify notification schedule_it dont_let_me_forget`,
  cancels: `stop cancel delete remove forget_about turn_off unsubscribe call_off quit dont_remind
    no_more_pings no_more_reminders no_more_alarms no_more_alerts no_more_messages no_more_nagging`,
  movesOn: `move reschedule postpone shift change switch`,
  pauses: `pause paused snooze mute hold_off`,
  resumes: `resume unpause unmute start_again`,
  watches: `watch watches watching warn warns warning warnings alarm alert alerts notify let_me_know keep_an_eye`,
  logs: `log logged logging record recorded save saved store stored note_down journal write_down`,
  shows: `show_me show_my list_my history chart graph plot trend trends trending tend tends tendency which_way heading
    last_readings every_figure`,
  compares: `compare compared comparing versus vs difference_between better_than`,
  converts: `convert converted converting conversion equals`,
  corrects: `undo delete_that remove_entry typo mistyped i_meant correction scrap_that wrong_number scrap_last
    scrap_the_last scratch_that scratch_last delete_last delete_the_last bin_the_last bin_that last_entry entry_was_wrong
    wrong_entry wrong_tank get_rid_of_that_last get_rid_of_the_last get_rid_of_my_last fat_fingers fat_fingered`,
} as const;
