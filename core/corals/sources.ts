import type { Source } from '../source.ts';

/** A source of the coral guide: where to find it, and how much of it was read for this project. */
export interface CoralSource extends Source {
  readonly where?: string;
  readonly seen: string;
}

/**
 * Every source the coral guide names. Most papers were read as abstracts only; one that was not seen at all has the
 * kind `memory` and carries no number.
 */
export const coralSources = {
  CTDB: {
    title:
      'Madin et al. 2016, The Coral Trait Database, Scientific Data 3:160017; release 1.1.1 data file (depth, habitat, growth form, diameter, growth rate; habitat fields trace to Veron 2000, depth largely to IUCN assessments 2008)',
    where: '10.1038/sdata.2016.17; data 10.6084/m9.figshare.2067414',
    seen: 'dataset used directly (84,131 rows)',
    kind: 'published',
  },
  OctoList2024: {
    title:
      'Octocoral Trait Database species list (2024), names keyed to World Register of Marine Species identifiers',
    where: 'repository copy dated 2024-07-01',
    seen: 'species list used; trait values were not in the copy',
    kind: 'published',
  },
  WoRMS: {
    title:
      'World Register of Marine Species taxon pages: Lobophyllia (205310), Blastomussa merleti (207385), Fungiidae (196100)',
    where: 'marinespecies AphiaID',
    seen: 'pages seen for these three taxa only',
    kind: 'published',
  },
  Sheppard1979: {
    title:
      'Sheppard C.R.C. 1979, Interspecific aggression between reef corals with reference to their distribution, Marine Ecology Progress Series 1:237-247',
    where: '10.3354/meps001237',
    seen: 'abstract',
    kind: 'published',
  },
  Dai1990: {
    title:
      'Dai C.-F. 1990, Interspecific competition in Taiwanese corals with special reference to interactions between alcyonaceans and scleractinians, Marine Ecology Progress Series 60 (volume from memory)',
    seen: 'abstract',
    kind: 'published',
  },
  AbelsonLoya1999: {
    title:
      'Abelson A., Loya Y. 1999, Interspecific aggression among stony corals in Eilat, Red Sea, Bulletin of Marine Science 65:851-860',
    seen: 'abstract; the ranked list itself was not visible',
    kind: 'published',
  },
  Lang1973: {
    title:
      'Lang J. 1973, Interspecific aggression by scleractinian corals 2, Bulletin of Marine Science 23(2)',
    seen: 'abstract',
    kind: 'published',
  },
  Logan1984: {
    title:
      'Logan A. 1984, interspecific aggression in hermatypic corals from Bermuda, Coral Reefs (title details from memory)',
    seen: 'abstract',
    kind: 'published',
  },
  FerrizHorta2001: {
    title:
      'Ferriz-Dominguez N., Horta-Puga G. 2001, Short-term aggressive behavior in scleractinian corals, La Blanquilla reef, Revista de Biologia Tropical',
    seen: 'abstract',
    kind: 'published',
  },
  LangmeadChadwick1999: {
    title:
      'Langmead O., Chadwick-Furman N.E. 1999, Marginal tentacles of the corallimorpharian Rhodactis rhodostoma 1. Role in competition for space, Marine Biology (year and volume from memory)',
    seen: 'abstract',
    kind: 'published',
  },
  ChadwickFurmanLoya1992: {
    title:
      'Chadwick-Furman N., Loya Y. 1992, Migration, habitat use, and competition among mobile corals (Fungiidae), Marine Biology 114:617-623',
    seen: 'abstract',
    kind: 'published',
  },
  Lapid2004: {
    title:
      'Lapid E.D., Wielgus J., Chadwick-Furman N.E. 2004, Sweeper tentacles of the brain coral Platygyra daedalea, Marine Ecology Progress Series (volume 282 from memory)',
    seen: 'abstract',
    kind: 'published',
  },
  LapidChadwick2006: {
    title:
      'Lapid E.D., Chadwick N.E. 2006, Long-term effects of competition on coral growth and sweeper tentacle development, Marine Ecology Progress Series 313:115-123',
    where: '10.3354/meps313115',
    seen: 'abstract',
    kind: 'published',
  },
  HidakaYamazato1984: {
    title:
      'Hidaka M., Yamazato K. 1984, Intraspecific interactions in Galaxea fascicularis: induced formation of sweeper tentacles, Coral Reefs',
    where: '10.1007/bf00263757',
    seen: 'abstract',
    kind: 'published',
  },
  Yosef2020: {
    title: 'Yosef O. et al. 2020, A tentacle for every occasion (Galaxea fascicularis), BMC Genomics 21',
    where: '10.1186/s12864-020-06952-w',
    seen: 'abstract',
    kind: 'published',
  },
  Chornesky1983: {
    title:
      'Chornesky E.A. 1983, Induced development of sweeper tentacles in Agaricia agaricites, Biological Bulletin 165:569-581 (title from memory)',
    where: '10.2307/1541466',
    seen: 'abstract',
    kind: 'published',
  },
  ChorneskyWilliams1983: {
    title: 'Chornesky E.A., Williams S.L. 1983, Distribution of sweeper tentacles on Montastraea cavernosa',
    seen: 'first page',
    kind: 'published',
  },
  Wellington1980: {
    title:
      'Wellington G.M. 1980, Reversal of digestive interactions between Pacific reef corals: mediation by sweeper tentacles, Oecologia',
    where: '10.1007/BF00398527',
    seen: 'summary',
    kind: 'published',
  },
  Miles1991: {
    title:
      'Miles J.S. 1991, Inducible agonistic structures in the corallimorpharian Discosoma sanctithomae, Biological Bulletin 180:406-415',
    seen: 'abstract',
    kind: 'published',
  },
  Griffith1997: {
    title:
      'Griffith J.K. 1997, Occurrence of aggressive mechanisms during interactions between soft corals and other corals on the Great Barrier Reef, Marine and Freshwater Research 48:129-135',
    where: '10.1071/MF96086',
    seen: 'abstract',
    kind: 'published',
  },
  Precoda2017: {
    title:
      'Precoda K. et al. 2017, Using traits to assess nontransitivity of interactions among coral species, American Naturalist (title from memory)',
    where: '10.1086/692758',
    seen: "authors' summary",
    kind: 'published',
  },
  LangChornesky1990: {
    title: 'Lang J.C., Chornesky E.A. 1990, Competition between scleractinian reef corals: a review',
    seen: 'NOT SEEN, no number taken from it',
    kind: 'memory',
  },
  SebensMiles1988: {
    title: 'Sebens K.P., Miles J.S. 1988, Sweeper tentacles in a gorgonian octocoral, Biological Bulletin',
    seen: 'NOT SEEN, existence from memory',
    kind: 'memory',
  },
  SURG: {
    title: 'Solitary Islands Underwater Research Group species page, Goniopora, citing Veron 1986 p. 236',
    seen: 'page',
    kind: 'published',
  },
  Titus2024: {
    title:
      'Titus B.M. et al. 2024, The clownfish-hosting sea anemones: updated nomenclature, Zootaxa 5506(1):1-34',
    where: '10.11646/zootaxa.5506.1.1',
    seen: 'treatments for Radianthus magnifica, R. doreensis; titles for R. crispa, Entacmaea, Stichodactyla',
    kind: 'published',
  },
  Dixon2014: {
    title:
      'Dixon A.K. et al. 2014, Microhabitat use and photoacclimation in Entacmaea quadricolor, Journal of the Marine Biological Association UK 94(3)',
    where: '10.1017/S0025315413001719',
    seen: 'abstract',
    kind: 'published',
  },
  Pryor2020: {
    title:
      'Pryor S.H. et al. 2020, Anemonefish facilitate bleaching recovery in a host sea anemone, Scientific Reports 10:18586',
    where: '10.1038/s41598-020-75585-6',
    seen: 'abstract',
    kind: 'published',
  },
  Arrigoni2023: {
    title:
      'Arrigoni R. et al. 2023, Phylogenetics and taxonomy of the family Euphylliidae, Contributions to Zoology 92(2):130-171',
    where: '10.1163/18759866-bja10041',
    seen: 'abstract',
    kind: 'published',
  },
  Arrigoni2016: {
    title:
      'Arrigoni R. et al. 2016, When forms meet genes: revision of Micromussa and Homophyllia, Contributions to Zoology 85(4)',
    seen: 'abstract',
    kind: 'published',
  },
  Huang2016: {
    title:
      'Huang D. et al. 2016, Taxonomic classification of the reef coral family Lobophylliidae, Zoological Journal of the Linnean Society 178:436-481',
    where: '10.1111/zoj.12391',
    seen: 'abstract and genus list',
    kind: 'published',
  },
  Huang2014: {
    title:
      'Huang D. et al. 2014, Taxonomic classification of Merulinidae, Montastraeidae and Diploastraeidae, Zoological Journal of the Linnean Society 171:277-355',
    where: '10.1111/zoj.12140',
    seen: 'record only',
    kind: 'published',
  },
  Benzoni2014: {
    title:
      'Benzoni F. et al. 2014, Revision of the genus Blastomussa with a new species, Raffles Bulletin of Zoology 62:358-378',
    seen: 'abstract',
    kind: 'published',
  },
  Gittenberger2011: {
    title:
      'Gittenberger A. et al. 2011, A molecularly based phylogeny of mushroom corals, Contributions to Zoology 80(2)',
    seen: 'abstract',
    kind: 'published',
  },
  SamimiNamin2016: {
    title:
      'Samimi-Namin K., van Ofwegen L. 2016, Overview of the genus Briareum in the Indo-Pacific, ZooKeys',
    seen: 'abstract',
    kind: 'published',
  },
  Low2016: {
    title:
      'Low M.E.Y. et al. 2016, The order Zoantharia: supraspecific classification and nomenclature, ZooKeys 641:1-80',
    where: '10.3897/zookeys.641.10346',
    seen: 'abstract',
    kind: 'published',
  },
  Levy2001: {
    title:
      'Levy O. et al. 2001, Factors controlling the expansion behavior of Favia favus, Biological Bulletin',
    seen: 'abstract',
    kind: 'published',
  },
  Chalker1983: {
    title:
      'Chalker B.E. et al. 1983, Bathymetric adaptations of reef-building corals at Davies Reef II, Journal of Experimental Marine Biology and Ecology',
    seen: 'abstract',
    kind: 'published',
  },
  DiPerna2018: {
    title:
      'DiPerna S. et al. 2018, Effects of variability in daily light integrals on Pachyseris speciosa and Acropora millepora, PLoS ONE 13(9):e0203882',
    where: '10.1371/journal.pone.0203882',
    seen: 'abstract',
    kind: 'published',
  },
  Lohr2019: {
    title:
      '2019, Resolving coral photoacclimation dynamics (Acropora muricata), Journal of Experimental Biology 222(8):jeb195982 (lead author from memory)',
    seen: 'abstract',
    kind: 'published',
  },
  Tagliafico2022: {
    title: 'Tagliafico A. et al. 2022, The effects of shade and light on corals, Frontiers in Marine Science',
    where: '10.3389/fmars.2022.919382',
    seen: 'abstract',
    kind: 'published',
  },
  Forsman2011: {
    title:
      'Forsman Z.H. et al. 2011, Coral farming: effects of light, water motion and artificial foods, Journal of the Marine Biological Association UK',
    seen: 'abstract',
    kind: 'published',
  },
  Rocha2013: {
    title:
      'Rocha R.J.M. et al. 2013, Photobiology and growth of leather coral Sarcophyton cf. glaucum under low light, Aquaculture',
    where: '10.1016/j.aquaculture.2013.08.018',
    seen: 'abstract',
    kind: 'published',
  },
  PocilloporaFeeding2020: {
    title:
      '2020, Pocillopora acuta culture at 105, 157 and 250 umol quanta, fed and unfed (Scientific Reports; PMC7673984; authors not shown in the record)',
    where: 'PMC7673984',
    seen: 'abstract',
    kind: 'published',
  },
  Tagliafico2018: {
    title:
      'Tagliafico A. et al. 2018, Optimizing heterotrophic feeding rates of three commercially important scleractinian corals, Aquaculture 483:96-101',
    where: '10.1016/j.aquaculture.2017.10.013',
    seen: 'abstract',
    kind: 'published',
  },
  GalaxeaFeeding2012: {
    title:
      '2012, Influence of heterotrophic feeding on survival and tissue growth of Galaxea fascicularis in aquaria (authors not shown in the record)',
    seen: 'abstract',
    kind: 'published',
  },
  Pratchett2020: {
    title:
      'Pratchett M.S. et al. 2020, Bleaching susceptibility of aquarium corals collected across northern Australia, Coral Reefs 39:663-673',
    seen: 'abstract',
    kind: 'published',
  },
  Knittweis2009: {
    title:
      'Knittweis L. et al. 2009, Population dynamics of Heliofungia actiniformis, Coral Reefs 28:793-804',
    where: '10.1007/s00338-009-0513-9',
    seen: 'abstract',
    kind: 'published',
  },
  JMST2013: {
    title:
      '2013, The adaptability to culture condition of some common coral genera (Symphyllia, Plerogyra, Euphyllia, Goniopora), Journal of Marine Science and Technology (Vietnam) 13(3)',
    where: '10.15625/1859-3097/13/3/3537',
    seen: 'abstract',
    kind: 'published',
  },
  Ding2022a: {
    title:
      'Ding D.-S. et al. 2022, Effects of temperature and salinity on Goniopora columna, Biology 11(3):436',
    where: '10.3390/biology11030436',
    seen: 'abstract',
    kind: 'published',
  },
  Ding2022b: {
    title:
      'Ding D.-S. 2022, The effect of feeding on Briareum violacea under temperature and salinity stress, Biology 11(3):410',
    where: '10.3390/biology11030410',
    seen: 'abstract',
    kind: 'published',
  },
  OctoGrowth2020: {
    title:
      '2020, Variable growth across species and life stages in Caribbean reef octocorals, Frontiers in Marine Science',
    where: '10.3389/fmars.2020.00483',
    seen: 'abstract; numbers not visible',
    kind: 'published',
  },
  CDC2015: {
    title:
      'Hamade A.K. et al. 2015, Suspected palytoxin inhalation exposures associated with zoanthid corals, Alaska, MMWR 64(31):852-855',
    where: '10.15585/mmwr.mm6431a4',
    seen: 'first part',
    kind: 'published',
  },
  Pelin2016: {
    title:
      'Pelin M. et al. 2016, Palytoxin-containing aquarium soft corals as an emerging sanitary problem, Marine Drugs 14(2):33',
    where: '10.3390/md14020033',
    seen: 'abstract',
    kind: 'published',
  },
  Schulz2019: {
    title:
      'Schulz M. et al. 2019, Inhalation poisoning with palytoxin from aquarium coral, Arh Hig Rada Toksikol 70:14-17',
    where: '10.2478/aiht-2019-70-3209',
    seen: 'abstract',
    kind: 'published',
  },
  VAPAGuide: {
    title:
      'VAPAGuide clinical database of venomous and poisonous animals, entry on hydrozoans and anthozoans (Millepora)',
    seen: 'entry',
    kind: 'published',
  },
  CITES2006N063: {
    title:
      'CITES Notification to the Parties 2006/063 (fossil corals): annotated Appendix II listings Helioporidae, Tubiporidae, Scleractinia, Milleporidae, Stylasteridae',
    seen: 'text',
    kind: 'published',
  },
  CITESAC22: {
    title: 'CITES AC22 Inf. 8, overview of coral products in trade: sand, gravel fragments and fossils',
    seen: 'summary',
    kind: 'published',
  },
  NOAA2014: {
    title:
      'NOAA/NMFS final rule, Federal Register 79 (175), 10 Sept 2014: 20 coral species listed as threatened',
    seen: 'summary',
    kind: 'published',
  },
  NOAA5yr: {
    title:
      'NOAA Fisheries 5-year review of 15 Indo-Pacific corals (data to Aug 2023); notes Euphyllia paradivisa now Fimbriaphyllia paradivisa',
    seen: 'summary',
    kind: 'published',
  },
  Guan2015: {
    title:
      'Guan Y. et al. 2015, Suitable environmental ranges for potential coral reef habitats, PLoS ONE 10(6):e0128831',
    where: '10.1371/journal.pone.0128831',
    seen: 'abstract',
    kind: 'published',
  },
  Kleypas1999: {
    title:
      'Kleypas J.A. et al. 1999, Environmental limits to coral reef development, American Zoologist 39:146-159',
    seen: 'abstract; table values quoted from memory',
    kind: 'published',
  },
  Kline2015: {
    title:
      'Kline D.I. et al. 2015, Six month in situ carbonate chemistry and temperature, Heron Island reef flat, PLoS ONE',
    where: '10.1371/journal.pone.0127648',
    seen: 'abstract',
    kind: 'published',
  },
  Millero2008: {
    title: 'Millero F.J. et al. 2008, The composition of standard seawater, Deep-Sea Research I',
    seen: 'abstract; ion values quoted from memory',
    kind: 'published',
  },
  NOAACRW: {
    title: 'NOAA Coral Reef Watch degree heating week product descriptions',
    seen: 'text',
    kind: 'published',
  },
  Sweet2011: {
    title:
      'Sweet M., Jones R., Bythell J. 2011 (online), Coral diseases in aquaria and in nature, Journal of the Marine Biological Association UK',
    where: '10.1017/S0025315411001688',
    seen: 'abstract',
    kind: 'published',
  },
  Barton2019: {
    title:
      'Barton J.A. et al. 2019, The life cycle of the Acropora coral-eating flatworm Prosthiostomum acroporae, Frontiers in Marine Science 6:524',
    where: '10.3389/fmars.2019.00524',
    seen: 'abstract',
    kind: 'published',
  },
  Wang2020: {
    title:
      'Wang A. et al. 2020, Phestilla subodiosus sp. nov., a corallivorous pest species in the aquarium trade, ZooKeys',
    seen: 'abstract',
    kind: 'published',
  },
  HoeksemaFarenzena2012: {
    title:
      '2012, Tissue loss in corals infested by acoelomorph flatworms (Waminoa sp.), Coral Reefs 31:869 (authors from memory)',
    where: '10.1007/s00338-012-0919-7',
    seen: 'excerpt',
    kind: 'published',
  },
  Accoroni2016: {
    title: 'Accoroni S., Totti C. 2016, The toxic benthic dinoflagellates of the genus Ostreopsis: a review',
    where: '10.4081/aiol.2016.5591',
    seen: 'abstract',
    kind: 'published',
  },
  Medeiros2014: {
    title:
      'Soriani Medeiros R. 2014, Acute toxicity of ammonia and nitrite in juvenile Amphiprion ocellaris, dissertation, FURG',
    seen: 'abstract',
    kind: 'published',
  },
} as const satisfies Record<string, CoralSource>;

export type CoralSourceKey = keyof typeof coralSources;
