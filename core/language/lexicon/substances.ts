/** Additions, salts and waters of a reef tank. */
export const substances = {
  alkPowder: `baking_soda bicarb bicarbonate soda_ash sodabicarb washing_soda carbonate alk_powder alk_solution
    alk_part`,
  calciumSalt: `calcium_chloride calcium_cloride cacl2 calcium_powder calcium_solution ice_melt calcium_part`,
  magnesiumSalt: `magnesium_chloride mgcl2 epsom epsom_salt magnesium_sulfate magnesium_sulphate mag_flakes`,
  twoPart: `two_part 2_part twopart 2part three_part all_in_one`,
  lime: `kalk kalkwasser kalc calkwasser limewater calcium_hydroxide lime`,
  lye: `lye caustic sodium_hydroxide naoh drain_cleaner oven_cleaner`,
  carbonSource: `vinegar vinager vodka vodca sugar carbon_dosing carbon_source acetate acetic biopellets bio_pellets`,
  nitrateAdd: `sodium_nitrate potassium_nitrate nitrate_solution stump_remover calcium_nitrate`,
  phosphateAdd: `sodium_phosphate trisodium_phosphate tsp monopotassium phosphate_solution`,
  phosphateRemover: `gfo ferric_oxide granular_ferric lanthanum lanthinum phosphate_remover aluminium_oxide
    phosphate_pad`,
  iodine: `iodine iodide iodin`,
  aminoAcids: `amino aminos amino_acid amino_acids`,
  vinegar: `vinegar vinager`,
  potassiumAdd: `potassium_chloride potassium_solution`,
  traces: `trace traces strontium boron bromide fluoride manganese molybdenum amino aminos amino_acids vitamins
    vitamin`,
  bacteriaBottle: `bottled_bacteria bottle_bacteria live_bacteria starter_bacteria bacteria_in_a_bottle`,
  ammoniaSource: `ammonium_chloride pure_ammonia ammonia_drops`,
  detoxifier: `dechlorinator dechlor thiosulfate water_conditioner ammonia_binder detoxifier`,
  dryFood: `pellet pellets pelets flake flakes flake_food granules freeze_dried dry_food`,
  flakeFood: `flake flakes flake_food`,
  pelletFood: `pellet pellets pelets granules`,
  frozenFood: `mysis misis brine artemia frozen frozen_food cube cubes krill squid chopped_shrimp silversides
    bloodworms`,
  greens: `nori nory seaweed_sheet lettuce spirulina veggie_clip`,
  coralFood: `coral_food powdered_food phyto phytoplankton rotifers rotifer marine_snow liquid_food target_food`,
  food: `food foods fud foood meal meals leftovers`,
  roWater: `rodi ro_di ro_water r_o reverse_osmosis purified distilled deionised deionized plain_water fresh_water freshwater`,
  tapWater: `tap tapwater faucet well_water municipal_water city_water mains_water`,
  rainWater: `rain rainwater pond_water river_water`,
  bottledWater: `bottled_water mineral_water spring_water softened_water water_softener`,
  seaWater: `seawater sea_water nsw ocean beach_water`,
  saltMix: `salt salts saltmix saltwater brackish`,
  tableSalt: `table_salt kosher_salt iodized_salt sodium_chloride`,
  rockAndSand: `live_rock dry_rock liverock base_rock aragonite live_sand crushed_coral`,
  ice: `ice ice_cubes frozen_bottle`,
  hotWater: `boiling_water hot_water steam boiled_water steaming`,
  precipitate: `precipitate precipitation precipitated sediment scale_deposit limescale calcium_buildup calcium_deposits
    salt_creep saltcreep`,
} as const;
