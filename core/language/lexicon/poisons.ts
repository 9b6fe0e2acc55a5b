/** Cleaners, poisons, acids, metals, medicines and glues. */
export const poisons = {
  bleach: `bleach hypochlorite pool_chlorine bottle_steriliser bottle_sterilizer steriliser_water sterilising_fluid
    sterilizing_fluid sterilising_tablets denture_tablet denture_tablets nappy_sanitiser oven_cleaner drain_cleaner`,
  chlorine: `chlorine chlorines chlorinated chloramine chloramines clorine pool_tablets`,
  ammoniaCleaner: `ammonia_cleaner ammonia_spray household_ammonia`,
  soap: `soap soaps soapy washing_up_liquid detergent detergents fabric_softener shampoo sanitiser sanitizer`,
  glassCleaner: `glass_cleaner window_cleaner window_spray surface_cleaner kitchen_cleaner all_purpose_cleaner
    disinfectant wipes bathroom_cleaner floor_cleaner carpet_cleaner polish`,
  airFreshener: `air_freshener airfreshener candle candles incense diffuser essential_oil essential_oils`,
  perfume: `perfume perfumes cologne deodorant hairspray hair_spray aftershave`,
  skinCream: `sunscreen sun_cream suncream lotion hand_cream moisturiser moisturizer insect_repellent`,
  insecticide: `insecticide pesticide bug_spray fly_spray ant_spray ant_killer roach_spray flea_treatment flea_spray
    flea_collar fumigated exterminator fogger mosquito_coil weedkiller herbicide`,
  aerosol: `aerosol aerosols spray_can sprayed spraying`,
  paint: `paint paints painting painted varnish primer lacquer`,
  solvent: `solvent solvents acetone thinner turpentine white_spirit petrol gasoline diesel nail_polish pvc_primer
    pvc_glue pvc_cement`,
  oil: `oil oils oily_film grease greasy lubricant petroleum_jelly silicone_grease`,
  smoke: `cigarette cigarettes smoking vape vaping cigar soot smoke_fumes`,
  buildingDust: `drywall plaster_dust cement concrete grout renovation sanding`,
  gas: `carbon_dioxide co2 chlorine_gas carbon_monoxide natural_gas toxic_gas hydrogen_sulfide hydrogen_sulphide h2s`,
  acid: `acid acids muriatic hydrochloric hcl sulfuric citric oxalic descaler lemon_juice acidic_cleaner`,
  peroxide: `peroxide h2o2 perioxide peroxyde`,
  alcohol: `isopropyl isopropanol ethanol methylated_spirits alcohol`,
  permanganate: `permanganate`,
  copper: `copper coper cuprous`,
  zincTin: `zinc galvanised galvanized tin brass bronze aluminium aluminum`,
  lead: `lead_weight lead_weights lead_strip plumbum mercury`,
  rust: `rust rusty rusted rusting corroded corrosion iron steel stainless screw screws`,
  coin: `coin coins coppers penny pennies pence earring earrings hairpin keyring jewellery jewelry bracelet`,
  battery: `battery batteries button_cell coin_cell`,
  magnet: `magnet magnets`,
  toy: `toy toys crayons`,
  antibiotic: `antibiotic antibiotics erythromycin kanamycin nitrofurazone metronidazole doxycycline amoxicillin
    ciprofloxacin`,
  copperTreatment: `copper_treatment copper_sulfate copper_sulphate chelated_copper ionic_copper`,
  antiprotozoal: `chloroquine quinine`,
  dewormer: `dewormer dewormers prazi praziquantel fenbendazole levamisole milbemycin ivermectin`,
  formalin: `formalin formaldehyde methylene_blue malachite malachite_green acriflavine trichlorfon organophosphate
    organophosphates potassium_permanganate`,
  dip: `dip dips dipping_solution freshwater_dip iodine_dip`,
  hypo: `hyposalinity hypo`,
  painkiller: `painkiller painkillers aspirin ibuprofen paracetamol tablets pills medicine medicines medication meds med
    prescription antiparasitic antiparasitics antifungal antifungals fish_meds steroid steroids dexamethasone medicated
    medicating tricaine eugenol`,
  algaecide: `algaecide algicide algae_killer fluconazole slime_remover cyano_remover`,
  poison: `poison poisons poisonous poisoned poisoning toxin toxins toxic contaminated contamination contaminant
    chemical chemicals`,
  superglue: `superglue cyanoacrylate glue glues`,
  epoxy: `epoxy epoxie putty`,
  silicone: `silicone silicon sealant caulk mould_resistant`,
  plastic: `plastic plastics zip_tie zip_ties cable_tie tape foam`,
} as const;
