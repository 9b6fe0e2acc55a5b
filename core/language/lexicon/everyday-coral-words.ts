/** Names of corals that are ordinary words unless "coral" or another part of the name stands with them. */
export const everydayCoralWords: ReadonlySet<string> = new Set(
  `anchor blue boulder brain brush bubble bullseye button cabbage cactus candy cap carnation carpet cauliflower clove colony
  colt corkscrew crust crystal cup daisy disc elegant feather finger fire fox frog galaxy grape hammerhead hedgehog hibiscus
  hood horn jasmine leaf lettuce lord meat moon mushrom needle octo pagoda peacock pearl phonograph plate polyp pulse ric ridge
  ruffled sandpaper saucer scroll slipper space starburst sun table thorn tongue tooth tree trumpet tube vase war whisker
  wonder wrinkle briar doughnut flowerpot antler litho magnifica dura`.split(/\s+/),
);

/** Those of them that mean a coral where a question is about corals and names no other: "brain on sand or rock?" */
export const coralWordsAmongCorals: ReadonlySet<string> = new Set(
  'anchor brain bubble cabbage carnation clove galaxy lettuce meat octo pagoda plate ric scroll trumpet'.split(
    ' ',
  ),
);
