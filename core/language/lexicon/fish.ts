/** Fish of a reef tank, by the trouble they cause or meet. */
export const fish = {
  tang: `tang tangs tangfish surgeonfish surgeon_fish surgeon doctorfish unicornfish acanthurus zebrasoma ctenochaetus
    paracanthurus naso powder_blue tomini bristletooth`,
  dwarfAngel: `dwarf_angel dwarf_angels pygmy_angel centropyge coral_beauty coral_beauties flame_angels flame_angel lemonpeel bicolor_angel`,
  largeAngel: `angel angels angelfish angle_fish pomacanthus holacanthus genicanthus`,
  clown: `clown clowns clownfish clown_fish anemonefish amphiprion ocellaris occellaris percula perculas premnas
    clarkii`,
  damsel: `damsel damsels damselfish chrysiptera dascyllus sergeant_major`,
  wrasse: `wrasse wrasses wrasse_fish rasse wrass sixline six_line melanurus halichoeres flasher flashers cirrhilabrus
    macropharyngodon coris hogfish`,
  sixLine: `sixline sixlines six_line six-line`,
  firefish: `firefish fire_fish dartfish nemateleotris`,
  cardinal: `cardinal cardinals cardinalfish banggai bangaii apogon`,
  chromis: `chromis chromises chromi`,
  anthias: `anthias anthia lyretail pseudanthias`,
  gramma: `gramma grammas royal_gramma`,
  dottyback: `dottyback dottybacks pseudochromis`,
  cleanerFish: `cleaner_wrasse cleaner_fish labroides neon_goby cleaner_goby`,
  goby: `goby gobies gobi gobys watchman shrimp_goby sand_sifter clown_goby gobiodon valenciennea cryptocentrus`,
  dartfish: `firefish fire_fish dartfish dart_goby nemateleotris jawfish jaw_fish opistognathus tilefish`,
  blenny: `blenny blennies bleny blennie tailspot salarias ecsenius`,
  fangBlenny: `fang_blenny fangblenny meiacanthus canary_blenny`,
  shoaling: `cardinal cardinals cardinalfish banggai bangaii apogon chromis chromises chromi anthias anthia anthias_fish
    lyretail pseudanthias school_of_fish shoal`,
  basslet: `basslet basslets gramma chalk_bass dottyback dottybacks pseudochromis assessor swissguard`,
  butterfly: `butterfly butterflies butterflyfish butterfly_fish copperband copper_band chelmon chaetodon bannerfish
    heniochus moorish_idol`,
  trigger: `trigger triggers triggerfish trigger_fish balistes clown_trigger bluejaw`,
  puffer: `puffer puffers pufferfish puffer_fish porcupinefish porcupine_fish toby valentini canthigaster blowfish
    tetrodotoxin`,
  toxicCoat: `boxfish cowfish cow_fish trunkfish box_fish ostracion soapfish`,
  filefish: `filefish file_fish aiptasia_eating_filefish acreichthys oxymonacanthus`,
  venomSpine: `lionfish lion_fish lionfishes pterois dwarf_lion scorpionfish scorpion_fish waspfish stonefish stone_fish
    toadfish weeverfish striped_eel_catfish`,
  rabbitfish: `rabbitfish rabbit_fish foxface fox_face foxfaces siganus spinefoot`,
  ray: `ray rays stingray stingrays`,
  shark: `shark sharks catshark`,
  eel: `eel eels moray morays echidna gymnothorax`,
  predator: `grouper groupers hawkfish hawk_fish flame_hawk frogfish frog_fish anglerfish angler snapper sweetlips
    squirrelfish soldierfish`,
  electricEel: `electric_eel electric_eels`,
  seahorse: `seahorse seahorses sea_horse sea_horses hippocampus pipefish pipe_fish pipefishes seadragon`,
  mandarin: `mandarin mandarins mandarinfish mandarin_fish dragonet dragonets scooter_blenny synchiropus`,
  anyFish: `fish dead_fish fishes fishies fishys fishy livestock stock critter critters swimmer swimmers tankmate tankmates
    tank_mate finned`,
  fry: `tiny_fish nano_fish baby_fish fry larvae larva juvenile juvie juvies hatchling`,
  freshFish: `goldfish gold_fish guppy guppies molly mollies betta tetra cichlid koi pleco freshwater_fish`,
  parasite: `ich ick itch_mites whitespot white_spot_disease cryptocaryon crypto velvet amyloodinium oodinium brook
    brooklynella uronema fluke flukes parasite parasites`,
  fishDisease: `popeye pop_eye dropsy fin_rot finrot lympho lymphocystis hlle swim_bladder bacterial_infection fungus
    disease diseases infection`,
  fishOnly: `fowlr fish_only`,
} as const;
