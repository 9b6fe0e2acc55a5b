/** What befalls the gear and the water. */
export const events = {
  wentUp: `went_up rose rising rises raised climbs climbing climbed increased increasing increases spiked spike spikes
    shot_up jumped_up crept_up creeping_up goes_up`,
  wentDown: `went_down dropped dropping drops fell falls falling decreased decreasing sank sinking plummeted goes_down
    dipped_down slid`,
  swings: `swing swings swinging swung fluctuates fluctuating fluctuation fluctuations unstable bouncing_around yo_yo
    all_over_the_place`,
  holds: `stuck_at steady stable stays_at holding unchanged the_same constant wont_budge wont_move plateau bottomed_out`,
  appears: `appeared appears appearing showed_up turned_up popped_up came_back returned noticed spotted covered_in`,
  disappears: `disappeared disappear vanished vanishing missing gone lost_track nowhere cant_find mia`,
  breaks: `broke broken breaks breaking cracked crack cracks cracking shattered snapped smashed busted chipped
    split_seam`,
  bursts: `burst bursting exploded explode blew_out bowed bowing bulging`,
  leaks: `leak leaks leaking leaked leeking drip_from dripping_from seeping seeps wet_floor`,
  floods: `flood floods flooded flooding overflowed overflowing overflows overfilled poured_out spill spilled spilt
    spilling water_everywhere`,
  drains: `drained draining emptied empty ran_dry run_dry running_dry low_water`,
  blocks: `clog clogs clogged blocked blockage jammed gunked plugged_up`,
  stops: `stopped stops quit died_on_me not_working wont_start wont_turn_on doesnt_work failed failing failure fails
    kaput conked_out packed_up turned_off switched_off shut_off unplugged`,
  runsAway: `stuck_on wont_turn_off ran_all_night left_on left_running ran_away stayed_on overdosed overdose overdosing
    dumped emptied_into`,
  overheats: `overheated overheating overheat cooked cooking_tank got_too_hot heat_wave heatwave`,
  chillsDown: `too_cold got_cold freezing cold_snap froze`,
  burnsUp: `smoking_plug burnt burned melted_plug spark sparks sparking sparked arcing fire flames caught_fire smoke
    smoked scorched singed`,
  fellIn: `fell_in fell_into dropped_in dropped_into knocked_in threw_in poured_in put_in`,
  smells: `smell smells smelly stinks stink stinky stank odor odour rotten_egg rotten_eggs reeks whiff`,
  noise: `noise noisy noises loud humming buzzing rattling rattle gurgling gurgle grinding vibrating vibration squealing
    clicking hissing whining`,
  cloudy: `cloudy clouded cloud milky murky hazy haze foggy white_water cloudiness cludy snowing snowstorm`,
  foams: `foaming frothing overskimming microbubbles micro_bubbles`,
  resets: `reset rebooted tripped trips power_cycled frozen_screen error_code firmware offline`,
  drifts: `drift drifted drifting reads_wrong inaccurate off_by disagree disagrees mismatch`,
  clears: `cleared clearing clears clear_water crystal_clear`,
  cycles: `cycle cycles cycled cycling fishless fishless_cycle`,
  mishap: `by_accident on_accident accidentally accidental accident by_mistake mistakenly oops whoops messed_up screwed_up`,
} as const;
