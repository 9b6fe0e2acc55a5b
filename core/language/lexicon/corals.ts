/** Corals, by what they bear and what they do to a hand. */
export const corals = {
  anyCoral: `coral corals corral corrals coraline_frag choral corel cnidarian`,
  frag: `frag frags fragment fragments fragg cutting cuttings`,
  colony: `colony colonies collony`,
  coralHead: `head heads polyp polyps pollyp`,
  coralEnd: `tip tips base bases`,
  coralSkeleton: `skeleton skeletons skelton`,
  coralFlesh: `flesh tissue tissues`,
  softCoral: `softie softies soft_coral soft_corals leather leathers leather_coral toadstool toadstools sarcophyton
    sinularia lobophytum devils_hand kenya_tree capnella colt_coral cladiella nephthea`,
  pulsing: `xenia xenias zenia anthelia`,
  starPolyp: `gsp green_star_polyp green_star_polyps star_polyps clove_polyp clove_polyps clavularia briareum
    pachyclavularia`,
  mushroom: `mushroom mushrooms mushroom_coral mushies shroom shrooms discosoma rhodactis ricordea ricordia corallimorph
    elephant_ear`,
  unlitSoft: `carnation_coral dendronephthya scleronephthya tree_coral`,
  zoanthid: `zoa zoas zoanthid zoanthids zoanthus zoanthis zoo_polyps button_polyp button_polyps`,
  palythoa: `paly palys palythoa palythoas protopalythoa pallys palytoxin pally_toxin`,
  euphyllia: `hammer hammers hammer_coral torch torches torch_coral frogspawn frogspawns frog_spawn octospawn euphyllia
    euphylia euphillia euphylias anchor_coral grape_coral fimbriaphyllia`,
  flowerpot: `goniopora gonipora goni gonis flowerpot flower_pot alveopora`,
  brain: `brain_coral brain_corals favia favias favites goniastrea platygyra trachyphyllia trachy open_brain lobo lobos
    lobophyllia wellsophyllia symphyllia moseleya maze_brain`,
  fleshyLps: `acan acans acanthastrea micromussa scoly scolys scolymia homophyllia cynarina blasto blastos blastomussa
    plate_coral fungia heliofungia donut_coral meat_coral elegance elegance_coral catalaphyllia`,
  branchLps: `duncan duncans duncanopsammia candy_cane candycane trumpet_coral caulastrea galaxea crystal_coral lps
    lps_coral bubble_coral plerogyra large_polyp`,
  chalice: `chalice chalices challice echinophyllia mycedium oxypora pectinia cup_coral`,
  turbinaria: `turbinaria scroll_coral pagoda`,
  sunCoral: `sun_coral sun_corals tubastrea tubastraea dendrophyllia non_photosynthetic nps`,
  acropora: `acro acros acropora acroporas akro acropra staghorn millepora millie milli tenuis table_coral`,
  montipora: `monti montis montipora montiporas monty capricornis digitata digi`,
  birdsnest: `birdsnest birdsnests birds_nest seriatopora stylophora stylo stylos pocillopora poci pocci`,
  otherSps: `sps sps_coral small_polyp stick sticks stony stony_coral hard_coral leptoseris lepto pavona psammocora
    cyphastrea leptastrea porites hydnophora`,
  mixedReef: `mixed_reef mixed_tank mixed_corals`,
  gorgonian: `gorgonian gorgonians gorg gorgs gorgonia sea_fan sea_fans sea_whip sea_whips`,
} as const;
