/** How a thing is said: denied, over, supposed, wished, heard. */
export const manner = {
  negation: `not no never without none nobody nobody's nobodys naebody naebodys naebody's no_one noone nothing neither nor isnt arent wasnt werent dont doesnt didnt havent hasnt
    hadnt wont cant cannot couldnt wouldnt shouldnt aint no_one no_longer no_sign_of nope nah`,
  avoided: `avoid avoided prevent prevented prevention instead_of rather_than free_of`,
  over: `fixed solved sorted resolved recovered recovering back_to_normal false_alarm all_good all_clear no_worries
    nevermind never_mind its_fine_now survived made_it under_control handled
    all_alive everything_lived everyone_lived nobody_died no_lasting_harm fine_since power_came_back panic_over no_loss not_one_loss no_losses no_harm`,
  past: `happened back_when in_my_last_tank old_tank previous_tank`,
  supposition: `if what_if would suppose supposing hypothetically hypothetical in_case incase imagine say_i
    theoretically theory scenario were_to would_happen could might maybe perhaps possibly`,
  hypothesis: `if what_if suppose supposing hypothetically hypothetical in_case incase imagine theoretically theory
    scenario were_to would_happen should_i_worry when_should at_what at_which can_survive could_survive can_live
    can_take how_long_can`,
  planning: `planning plan plans planned thinking_of thinking_about considering intend intending about_adding preparing
    prepare`,
  wish: `want wants wanted wanna need needs needed should goal target aim aiming hoping hope wish would_like id_like
    prefer like_to trying_to`,
  rise: `get_it_up bring_up raise raise_it raises lifts increases boosts boost bumps`,
  lower: `bring_down lower lower_it lowers reduce reduces cut_down get_rid_of`,
  caps: `cap capped capping max maximum at_most no_more_than not_more_than no_faster_than not_faster_than limit limited
    limiting keep_it_under keep_it_below stay_under slower_than`,
  trusts: `trust trusts trusted trusting believe believes rely`,
  may: `you_can you_may ok_to okay_to fine_to safe_to can_i could_i may_i am_i_allowed is_it_possible possible can_you`,
  must: `must have_to has_to got_to gotta required necessary supposed_to`,
  askMuch: `how_much how_many how_mutch howmuch amount quantity how_big how_strong how_large what_amount`,
  askHow: `how how_do how_to how_do_i how_can how_should best_way way_to steps instructions procedure method`,
  askWhen: `when how_long how_often what_time how_soon how_frequently when_should`,
  askWhy: `why how_come what_causes whats_causing cause causes reason reasons what_made`,
  askWhere: `where where_do where_should whereabouts which_spot placement place_it location`,
  askWhich: `which what_is whats what_are what_kind what_type which_one who define meaning what_does explain identify
    id_this what_the`,
  askLevel: `how_high how_low how_hot how_cold how_warm`,
  actsNow: `lose_sleep losing_sleep panic worry worrying worried concerned concern alarmed intervene makes_you_run you_run i_run emergency step_in`,
  askOk: `is_it_ok is_it_safe safe safely normal is_this_normal is_that_ok okay_to harmful dangerous danger harmless
    risky risk risks will_it_hurt should_i_worry compatible reef_safe`,
  askPace: `how_fast how_quick how_quickly how_slow how_slowly too_fast too_quick too_quickly`,
  askTrue: `true is_it_true myth myths really fact legit bs nonsense debunk actually_work`,
  askBest: `best recommend recommended recommendation suggest suggestion suggestions advice opinion thoughts ideal
    optimal`,
  askFast: `how_fast how_quick how_quickly how_slow how_slowly how_tall how_wide growth_rate`,
  ease: `easy easier easiest hard harder hardest hardy hardier hardiest difficult demanding delicate tough tougher
    fragile forgiving picky fussy worth_it`,
  beginner: `beginner beginners newbie newbies noob noobs novice starter`,
  lawful: `legal legally illegal cites protected endangered permit permits`,
  lethal: `kill kills killed lethal deadly fatal`,
  ruins: `ruin ruins nuke nukes nuked nuking wipe wipes wiping wipe_out wipes_out takes_all takes_everything`,
  waits: `wait waits waited waiting year_one first_year whole_year full_year gatekeeping carved_in_stone`,
  toxic: `toxic poisonous venomous toxin toxins`,
  hearsay: `they_say read heard told i_read i_heard was_told someone_said people_say according_to apparently supposedly
    claims claimed says`,
  rumour: `they_say people_say everyone_says everybody_says i_read ive_read i_heard ive_heard was_told been_told
    according_to supposedly someone_said forum_says guide_says book_says rule_says`,
  source: `forum forums video videos article guide guides blog website rule rule_of_thumb book books online label
    instructions_say post thread_online`,
  plea: `help please pls plz halp urgent urgently asap emergency emergancy hurry quick sos stat`,
  panic: `panic panicking freaking_out freaking omg oh_no oh_my_god god wtf holy_crap shit damn fuck scared terrified
    worried desperate crying aaah ahhh`,
  asksBot: `what_can_you what_you_can what_do_you_do what_you_do what_can_it_do what_does_it_do what_are_you who_are_you
    what_do_you_know what_you_know what_it_is_you_do what_is_it_you_do questions_do_you questions_can_i what_else_can_you
    how_do_you_work what_can_i_ask are_you_a`,
  thanks: `thanks thank_you thx ty tysm cheers appreciated appreciate much_obliged`,
  chasesNumbers: `chasing_something chasing_anything chasing_numbers chasing_a_number chasing_ph chasing_values
    chasing_parameters chasing_colour chase_numbers chase_anything`,
  greeting: `hi hello hey hiya howdy good_morning good_evening greetings yo sup`,
  foreign: `hola ayuda por_favor gracias muriendo pez peces hilfe hallo bitte danke stirbt fisch fische fischen mein meine
    meinem bonjour salut merci poisson poissons au_secours aidez aiuto pesce ola ajuda obrigado obrigada peixe`,
  newcomer: `newbie noob beginner new_here i_am_new im_new start_a_reef start_a_tank get_started getting_started
    get_into want_a_reef want_a_tank first_reef first_tank first_aquarium starting_out where_to_start
    where_do_i_start`,
  farewell: `bye goodbye good_night see_you`,
  joking: `lol lmao haha hahaha rofl kidding just_kidding jk joke joking funny_story hehe`,
  frustration: `frustrated frustrating annoying annoyed fed_up sick_of giving_up give_up hate ugh stupid`,
  doubt: `not_sure unsure no_idea dunno idk dont_know confused confusing lost i_guess i_think probably seems looks_like
    guess sure_if not_sure_if unsure_if wonder_if wondering_if know_if dont_know_if no_idea_if idk_if see_if check_if
    tell_if cant_tell_if ask_if asking_if`,
  otherPerson: `my_friends a_friends a_customer customers_tank member members club someone somebody my_neighbours
    a_guy_i_know this_guy clients_tank asking_for_a_friend friends_tank buddys_tank mates_tank neighbours_tank
    my_neighbors neighbors_tank brothers_tank sisters_tank dads_tank moms_tank mums_tank his_tank her_tank
    their_tank`,
  othersTank: `my_friends a_friends a_customer customers_tank someone somebody my_neighbours a_guy_i_know this_guy
    clients_tank asking_for_a_friend friends_tank buddys_tank mates_tank neighbours_tank my_neighbors neighbors_tank
    brothers_tank sisters_tank dads_tank moms_tank mums_tank his_tank her_tank their_tank`,
  newSubject: `another_tank other_tank my_other_tank different_tank second_tank my_second_tank new_question
    another_question different_question separate_question different_subject new_subject different_topic new_topic
    change_of_subject unrelated`,
  ownThing: `my mine our i_have ive ive_got ours`,
  agreement: `ok okay k yes yeah yep yup sure alright right correct exactly agreed got_it understood sounds_good`,
  continuation: `and_then what_next whats_next do_that also then_what next_step go_on carry_on continue and_now
    what_about how_about same_for what_else anything_else`,
  refusal: `i_wont dont_want not_going_to refuse refuses rather_not not_keen not_keen_on wont_hear_of no_hear_o
    not_hear_of`,
  repeat: `repeat say_again pardon come_again again what_did_you_say`,
  correction: `i_mean i_meant sorry_i_meant no_wait wait_no actually its_actually correction typo mistyped scrap_that make_it
    make_that oops whoops i_said_wrong read_it_wrong misread not_that oh_wait wait_its hang_on sorry_its sorry_it_was
    sorry_that_was no_its no_it_was no_sorry ah_no oh_no_its scratch_that forget_that forget_what_i_said wrong_word
    i_was_wrong my_mistake my_bad i_read_it_wrong looked_again just_checked_again`,
  contrast: `but however although except though despite even_though otherwise`,
  degree: `life_threatening serious severe critical severely badly mild minor`,
  unitLength: `inch inches feet_long foot_long cm centimetre centimeter centimetres mm millimetre metre meter`,
  unitVolume: `gallon gallons gal gals galons litre litres liter liters ltr ml mls millilitre milliliter millilitres
    imperial_gallon quart pint ounce fluid_ounce fl_oz`,
  unitWeight: `gram grams gramme grammes kilo kilos kilogram kg pound pounds lb lbs oz mg milligram`,
  restores: `restore restores restored bring_it_back bring_back get_it_back get_back back_up_to put_it_back back_to_where
    back_where`,
  unitSpoon: `teaspoon teaspoons tsp tsps spoons tbsps tablespoon tablespoons tbsp cup cups capful capfuls spoonful drops_of`,
  unitTemp: `degrees degree celsius fahrenheit farenheit centigrade`,
  unitChem: `ppm ppb ppt dkh meq milliequivalents sg mg_per_litre parts_per_million parts_per_thousand microsiemens`,
  unitPower: `watt watts kilowatt kwh wattage`,
  unitTime: `second seconds minute minutes hour hours week weeks months year years`,
  shuts: `shut shuts shutting closed closing sealed draughtproofed`,
} as const;
