/** What befalls fish and corals. */
export const lives = {
  stocked: `fish_in fish_-_in fish_inside has_fish_in have_fish_in with_fish_in already_stocked fish_already`,
  dies: `die dies died dying dieing deaths death dead_fish perished croaked belly_up floater lost_a lost_my losing
    wiped_out wipeout killed_everything tank_crash crashed`,
  melts: `melt melts melting melted meltdown disintegrating dissolving falling_apart mush goo`,
  rots: `rot rots rotting rotted rotten necrosis jelly_disease brown_jelly bjd decaying decay`,
  sheds: `shed sheds shedding molt molted molting moult moulted moulting waxy`,
  bleaches: `bleached bleaching paled paling fading faded fade lost_color lost_colour losing_color losing_colour
    washed_out`,
  browns: `browned browning turned_brown turning_brown darkening`,
  closes: `closed closes closing wont_open not_opening shut retracted retracts retracting polyps_in not_extending`,
  opens: `open opened opening opens polyps_out extending came_out`,
  shrinks: `shrinks shrinking shrunk shrank shriveled shrivelled shriveling deflated deflating deflates smaller_every`,
  swells: `inflated inflating inflates bloated bloating puffed_out ballooned bubbled_up`,
  stretches: `stretched stretching stretches reaching elongated leggy tall_polyps`,
  recedes: `recede recedes receding receeding recession`,
  peels: `peel peels peeling peeled stn rtn strip_off stripping tissue_loss necrotic flaking_off bailed bailing
    polyp_bailout`,
  slimes: `slimed sliming slimes mucus mucous`,
  nipped: `nips nipping picking picked_at pecking nipped grazing_on chewed nibbled nibbling nibbles picks_at
    pecks goes_for going_for munching munches munched chewing helping_himself helping_itself`,
  eaten: `eaten eats_my_coral devoured preyed hunted snacked`,
  floats: `floating floated drifting_around loose detached let_go fell_off blown_off`,
  toppled: `fell_over knocked_over toppled tipped upside_down rockslide rock_slide avalanche flipped`,
  jumps: `jump jumps jumped jumping jumper jumpers carpet_surfing carpet_surfed on_the_floor leaped leapt`,
  hides: `hiding hides hid hidden hide wont_come_out buried burying`,
  fights: `fight fights fighting fought chasing chases chased bully bullies bullying bullied aggressive agressive
    aggression harassing attacking attacked attacks ripped_fins torn`,
  gasps: `gasp gasping gasps gulping_air heavy_breathing breathing_fast breathing_heavy rapid_breathing at_the_surface
    low_oxygen suffocating suffocated`,
  scratches: `scratching_on flashing rubbing glancing twitching`,
  listless: `lethargic lying_on_bottom laying_on_side listless swimming_weird swimming_sideways spinning
    upside_down_fish head_standing pacing glass_surfing spins twirling corkscrews corkscrewing on_its_side
    on_his_side on_her_side on_their_side tail_down head_down nose_down somersaults swims_funny swims_oddly`,
  eats: `eating eats feeds_well good_appetite hungry`,
  refuses: `not_eating wont_eat stopped_eating refuses refusing spits spitting spat_out starving starved thin skinny
    anorexic pinched_belly lost_weight emaciated skinnier thinner hollow_belly sunken_belly bony wont_touch_food
    no_appetite lost_appetite off_his_food off_its_food`,
  poops: `poop poops pooped faeces`,
  spawns: `spawn spawned spawning laid_eggs breeding bred pair paired mating smoky_release`,
  grows: `grow growing grew grown grows growth regrow regrowing healing healed heals`,
  spreads: `spread spreading spreads overgrown takes_over taking_over invading exploded_in_numbers population_exploded infested infestation
    multiplied multiplying outbreak`,
  splits: `split splits splitting divided cloned reproducing babies_everywhere`,
  stings: `sting stings stinging_neighbor stung touching_neighbor warfare allelopathy killing_neighbour killing_neighbor
    overshadowing`,
  wanders: `wandering walking_anemone moved_on_its_own roaming moved_overnight relocated_itself`,
  sucked: `sucked_in sucked_into stuck_in_pump shredded in_the_overflow went_through_pump chopped_up`,
} as const;
