/** People, their bodies, what they feel and what befalls them. */
export const body = {
  hand: `hand hands finger fingers fingertip thumb thumbs knuckle knuckles palm wrist wrists fingernail fingernails nail
    nails`,
  arm: `arm arms forearm shoulder armpit`,
  legs: `leg legs ankle knee thigh shin toe toes heel feet barefoot`,
  eye: `eye eyes eyeball eyelid eyelids eyesight cornea contact_lens contacts vision`,
  face: `face cheek chin forehead lips lip tongue`,
  mouth: `my_mouth throat swallow gums teeth`,
  airway: `nose nostril nostrils lung lungs chest airway airways`,
  trunk: `back_pain stomach stomache tummy belly gut hip neck`,
  skin: `skin scab pores`,
  heart: `heart pulse heartbeat palpitations pacemaker`,
  headPain: `headache head_ache migraine my_head skull`,
  burning: `burning stinging stingy smarting raw sore soar burn burns`,
  numb: `numb numbness num tingling tingle tingles tingly pins_and_needles metallic_taste`,
  dizzy: `dizzy dizziness dizy lightheaded light_headed woozy faint drowsy disoriented`,
  sick: `nauseous nausea nausious queasy vomit vomiting vomited puked throwing_up threw_up throw_up diarrhea diarrhoea
    poorly sick ill`,
  fever: `fever feverish chills chilled shivering shivers shaking flu sweating sweats aching aches chill shiver`,
  cough: `cough coughing coughed sneezing sneeze hoarse runny_nose`,
  breathless: `breathless short_of_breath cant_breathe wheezing wheeze wheezy tight_chest chest_tightness
    hard_to_breathe breathing_trouble asthma asthmatic inhaler`,
  rash: `rash rashes rashy hives welt welts blister blisters blistered blistering redness bump bumps red_streak`,
  swelling: `swelling swollen swole puffy_finger puffed_finger inflamed inflammation throbbing swell`,
  itching: `itching itchy itches itched scratching_my itch`,
  pain: `pain painful hurts hurt hurting ouch ow agony excruciating cramp cramps cramping`,
  weak: `weak weakness limp_arm muscle_pain muscle_ache paralyzed paralysed cant_move slurred`,
  allergy: `allergic allergy allergies anaphylaxis anaphylactic reaction_to`,
  infected: `infected_cut pus septic sepsis oozing granuloma mycobacterium wont_heal not_healing tetanus red_line pink_line
    red_stripe pink_stripe red_streaks line_going line_goes line_climbing line_running line_creeping line_moving
    line_up streak streaks going_up_my_arm up_my_arm up_the_arm climbing_my_arm armpit gland glands lymph weeping
    festering gone_hot hot_and_red red_and_hot feels_hot spreading_red red_ring`,
  bled: `bled bleed bleeding bleeds blood bloody`,
  fainted: `fainted passed_out collapsed unconscious blacked_out seizure unresponsive knocked_out`,
  slipped: `slipped slip tripped_over fell_down fell_off_ladder twisted sprained`,
  choked: `choked choking chokes gagging gagged`,
  swallowed: `swallowed swallowing drank drunk drink drinks ingested ate_some gulped sipped mouthful sucked_up tasted
    licked`,
  inhaled: `inhaled inhale inhaling breathed_in breathing_in sniffed fumes fume vapour vapors`,
  splashed: `splashed splash splashing squirted squirt sprayed_in got_in_my in_my_eye spilled_on spilt_on`,
  stung: `stung_me stung`,
  bitten: `bitten bit_me bites_me bit_my got_bit bite nipped_me`,
  pricked: `pricked prick poked spiked_me punctured puncture jabbed stabbed spine_in splinter stuck_in_my_finger`,
  shocked: `electrocuted electrocution electricuted zapped zap zaps zapping tingle_from_water shocked shock`,
  scalded: `burnt_hand scalded scald chemical_burn sunburnt burnt burned`,
  cutMyself: `cut_myself sliced_my gash gashed laceration graze grazed scrape_on_hand nicked_my wound wounds stitches
    cut cuts`,
  pregnant: `pregnant pregnancy breastfeeding immune_compromised diabetic`,
  doctor: `doctor doctors gp physician nurse clinic urgent_care walk_in vet vets veterinarian`,
  hospital: `hospital emergency_room a_and_e casualty er_visit`,
  ambulance: `ambulance paramedic paramedics call_911 call_999 call_112 nine_one_one emergency_services fire_brigade`,
  poisonCentre: `poison_centre poison_center poison_control poison_line poison_hotline`,
  firstAid: `first_aid plaster plasters bandage dressing antiseptic rinse rinsed rinsing eyewash eye_wash flush_eye
    hot_water_soak antihistamine vinegar_on_it`,
  self: `myself me mine`,
  child: `son daughter kid kids toddler toddlers baby babies child children boy girl little_one grandson granddaughter
    teenager`,
  partner: `wife husband girlfriend boyfriend partner spouse`,
  elder: `grandma grandmother granny nan grandpa grandad grandfather grandparents`,
  parent: `mom mum mother dad father parents stepdad stepmom`,
  kin: `brother sister uncle aunt cousin nephew niece family roommate flatmate`,
  otherPeople: `friend friends buddy mate customer customers client clients neighbour neighbor neighbours landlord guest
    coworker colleague babysitter tank_sitter housesitter`,
  fin: `fin fins dorsal tail tailfin pectoral`,
  gill: `gill gills operculum`,
  fishScale: `scales lateral_line slime_coat fish_belly fish_eye snout`,
  coralPart: `polyp polyps pollyp tentacle tentacles tenticle tenticles sweeper sweepers oral_disc oral_disk mesentery
    mouths mouth`,
  coralFlesh: `flesh tissue tissues coenosarc mantle`,
  skeleton: `skeleton skeletons skelton corallite septa`,
  coralSite: `tip tips axial encrusting_edge stalk stem branch branches heads mat`,
  animalPart: `foot pedal_disc tube_feet byssal claw claws antenna antennae shell shells exoskeleton`,
} as const;
