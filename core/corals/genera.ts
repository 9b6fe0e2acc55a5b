/**
 * Genera of stony corals (Scleractinia) by family, living ones, so that a real name is never read as another. From
 * memory, no source seen, but for the genera the guide has from the Coral Trait Database; not complete, and families of
 * some are in dispute. Genera no longer accepted stand in `olderGenera`.
 */
const families: Readonly<Record<string, string>> = {
  Acroporidae: 'Acropora Alveopora Anacropora Astreopora Enigmopora Isopora Montipora',
  Agariciidae: 'Agaricia Coeloseris Dactylotrochus Gardineroseris Helioseris Leptoseris Pavona',
  Anthemiphylliidae: 'Anthemiphyllia',
  Astrocoeniidae: 'Palauastrea Stephanocoenia Stylocoeniella',
  Caryophylliidae:
    'Anomocora Aulocyathus Bathycyathus Bourneotrochus Brachytrochus Caryophyllia Ceratotrochus Coenocyathus ' +
    'Coenosmilia Colangia Concentrotheca Confluphyllia Conotrochus Crispatotrochus Dasmosmilia Desmophyllum ' +
    'Ericiocyathus Faustinotrochus Goniocorella Heterocyathus Hoplangia Labyrinthocyathus Lochmaeotrochus ' +
    'Monohedotrochus Nomlandia Oxysmilia Paraconotrochus Paracyathus Phacelocyathus Phyllangia Polycyathus ' +
    'Pourtalosmilia Premocyathus Rhizosmilia Solenosmilia Stephanocyathus Sympodangia Tethocyathus Thalamophyllia ' +
    'Trochocyathus Vaughanella',
  Cladocoridae: 'Cladocora',
  Coscinaraeidae: 'Anomastraea Coscinaraea Craterastrea Horastrea',
  Deltocyathidae: 'Deltocyathus',
  Dendrophylliidae:
    'Astroides Balanophyllia Bathypsammia Cladopsammia Dendrophyllia Dichopsammia Duncanopsammia Eguchipsammia ' +
    'Enallopsammia Endopachys Endopsammia Heteropsammia Leptopsammia Notophyllia Pourtalopsammia Rhizopsammia ' +
    'Thecopsammia Trochopsammia Tubastraea Turbinaria',
  Diploastraeidae: 'Diploastrea',
  Euphylliidae: 'Ctenella Euphyllia Fimbriaphyllia Galaxea Gyrosmilia Montigyra Simplastrea',
  Faviidae:
    'Colpophyllia Diploria Favia Isophyllia Manicina Mussa Mussismilia Mycetophyllia Pseudodiploria Scolymia',
  Flabellidae:
    'Blastotrochus Falcatoflabellum Flabellum Javania Monomyces Placotrochides Placotrochus Polymyces Rhizotrochus ' +
    'Truncatoflabellum',
  Fungiacyathidae: 'Fungiacyathus',
  Fungiidae:
    'Cantharellus Ctenactis Cycloseris Danafungia Fungia Halomitra Heliofungia Herpolitha Lithophyllon Lobactis ' +
    'Pleuractis Podabacia Polyphyllia Sandalolitha Sinuorota Zoopilus',
  Gardineriidae: 'Gardineria Stolarskicyathus',
  Guyniidae: 'Guynia',
  Leptastreidae: 'Leptastrea',
  Lobophylliidae:
    'Acanthastrea Acanthophyllia Australophyllia Cynarina Echinomorpha Echinophyllia Homophyllia Indophyllia ' +
    'Lobophyllia Micromussa Moseleya Oxypora Paraechinophyllia Sclerophyllia',
  Meandrinidae: 'Dendrogyra Dichocoenia Eusmilia Goreaugyra Meandrina',
  Merulinidae:
    'Astrea Australogyra Boninastrea Catalaphyllia Caulastraea Coelastrea Cyphastrea Dipsastraea Echinopora ' +
    'Erythrastrea Favites Goniastrea Hydnophora Leptoria Merulina Mycedium Orbicella Oulophyllia Paragoniastrea ' +
    'Paramontastraea Pectinia Physophyllia Platygyra Scapophyllia Trachyphyllia',
  Micrabaciidae: 'Leptopenus Letepsammia Rhombopsammia Stephanophyllia',
  Montastraeidae: 'Montastraea',
  Oculinidae: 'Bathelia Cyathelia Madrepora Oculina Petrophyllia Schizoculina Sclerhelia Solenastrea',
  Oulastreidae: 'Oulastrea',
  Pachyseridae: 'Pachyseris',
  Plerogyridae: 'Blastomussa Nemenzophyllia Physogyra Plerogyra',
  Plesiastreidae: 'Plesiastrea',
  Pocilloporidae: 'Madracis Pocillopora Seriatopora Stylophora',
  Poritidae: 'Bernardpora Calathiscus Goniopora Machadoporites Porites Stylaraea',
  Psammocoridae: 'Psammocora',
  Rhizangiidae: 'Astrangia Cladangia Culicia Oulangia Rhizangia',
  Schizocyathidae: 'Pourtalocyathus Schizocyathus Temnotrochus',
  Siderastreidae: 'Pseudosiderastrea Siderastrea',
  Stenocyathidae: 'Stenocyathus Truncatocyathus',
  Turbinoliidae:
    'Alatotrochus Australocyathus Conocyathus Cryptotrochus Cyathotrochus Deltocyathoides Dunocyathus ' +
    'Endocyathopora Foveolocyathus Holcotrochus Idiotrochus Kionotrochus Laminocyathus Lissotrochus Notocyathus ' +
    'Oryzotrochus Pedicellocyathus Peponocyathus Platytrochus Pleotrochus Pseudocyathoceras Sphenotrochus ' +
    'Thrypticotrochus Trematotrochus Tropidocyathus Turbinolia Wellsotrochus',
};

/**
 * Older genera and spellings, and the accepted genus most of their species are in now. From memory, no source seen. The
 * many that only write -astraea for -astrea are left to the mending of spelling.
 */
const olderGenera: Readonly<Record<string, string>> = {
  Acrhelia: 'Galaxea',
  Amphihelia: 'Madrepora',
  Astraea: 'Astrea',
  Astroria: 'Platygyra',
  Australomussa: 'Lobophyllia',
  Bantamia: 'Blastomussa',
  Barabattoia: 'Dipsastraea',
  Caulastrea: 'Caulastraea',
  Clavarina: 'Merulina',
  Coeloria: 'Platygyra',
  Coenopsammia: 'Tubastraea',
  Cosmoporites: 'Porites',
  Cryptabacia: 'Polyphyllia',
  Cyathohelia: 'Cyathelia',
  Cylicia: 'Culicia',
  Dasyphyllia: 'Caulastraea',
  Diaseris: 'Cycloseris',
  Doederleinia: 'Sandalolitha',
  Domoseris: 'Leptoseris',
  Gemmipora: 'Turbinaria',
  Haloseris: 'Leptoseris',
  Heliastraea: 'Orbicella',
  Heliastrea: 'Orbicella',
  Herpetoglossa: 'Herpolitha',
  Herpetolitha: 'Herpolitha',
  Isophyllastrea: 'Isophyllia',
  Leptosmilia: 'Euphyllia',
  Lithactinia: 'Polyphyllia',
  Lithophyllia: 'Scolymia',
  Lophelia: 'Desmophyllum',
  Lophohelia: 'Desmophyllum',
  Lophoseris: 'Pavona',
  Maeandra: 'Platygyra',
  Maeandrina: 'Meandrina',
  Manopora: 'Montipora',
  Meandra: 'Platygyra',
  Montastrea: 'Montastraea',
  Mycetoseris: 'Leptoseris',
  Napopora: 'Porites',
  Palauphyllia: 'Lobophyllia',
  Parahalomitra: 'Sandalolitha',
  Parascolymia: 'Lobophyllia',
  Phymastrea: 'Paramontastraea',
  Polyastra: 'Pavona',
  Prionastraea: 'Favites',
  Prionastrea: 'Favites',
  Psammoseris: 'Heteropsammia',
  Rhodaraea: 'Goniopora',
  Siderastraea: 'Siderastrea',
  Stephanaria: 'Psammocora',
  Symphyllia: 'Lobophyllia',
  Synaraea: 'Porites',
  Tichoseris: 'Pavona',
  Tridacophyllia: 'Pectinia',
  Tubastrea: 'Tubastraea',
  Ulastraea: 'Oulastrea',
  Ulophyllia: 'Oulophyllia',
  Undaria: 'Agaricia',
  Verrillofungia: 'Lithophyllon',
  Wellsofungia: 'Pleuractis',
  Wellsophyllia: 'Trachyphyllia',
};

/** A genus of stony corals; `now` is where its species are today, for one no longer accepted. */
export interface Genus {
  readonly name: string;
  readonly family: string;
  readonly now?: string;
}

const accepted: readonly Genus[] = Object.entries(families).flatMap(([family, names]) =>
  names.split(' ').map((name) => ({ name, family })),
);
const familyOf = new Map(accepted.map(({ name, family }) => [name, family]));

/** Every genus known here, accepted and older. */
export const genera: readonly Genus[] = [
  ...accepted,
  ...Object.entries(olderGenera).flatMap(([name, now]) => {
    const family = familyOf.get(now);
    return family === undefined ? [] : [{ name, now, family }];
  }),
];
