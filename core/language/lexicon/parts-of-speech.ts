/**
 * Words by what they do in a message, each class once: what one word of a class was learnt of holds for the others. Plural
 * and past forms stand beside their word, since a stem would join words that mean different things ("left", "leaving").
 */
export const parts = {
  moved: `went go gone going dropped drop drops dropping fell fall falls falling rose rise rises rising jumped jump jumps crept
    creeps creeping climbed climbs climbing crashed crash crashes sank sunk sinks slid slides slipped spiked spikes shot plunged
    plummeted tanked drifted drifts swung swings came moved moves increased decreased climbed doubled halved changed shifted`,
  wish: `want wants wanted wanna need needs needed like wish goal target aim aiming reach hit should bring get raise lower
    bump boost lift push fix correct adjust gonna trying try towards desired ideal supposed aimed shooting shoot`,
  is: `is its it's am are reads read reading reeds shows show showing says say measures measured measure tests tested test
    testing sits sitting at now currently today result results stays holding holds steady came`,
  was: `was were before used been previously earlier last yesterday originally started start began first initially usually
    normally always until till ago from`,
  dosed: `dosed dose dosing doses add added adding adds put puts putting poured pour pouring dumped dump dumping gave give
    giving gives dropped squirted tipped spilled mixed mix mixing stirred stir dissolve dissolved used`,
  uses: `uses use using eats eat eating consumes consumption consume usage burns burn burning loses lose losing takes demand
    uptake drinks goes`,
  change: `change changes changed changing wc wcs swap swaps swapped exchange exchanged replace replaced waterchange
    waterchanges`,
  vessel: `bucket buckets barrel barrels drum drums bin bins trash can cans jug jugs bottle bottles container containers tub
    tubs bag bags canister canisters reservoir reservoirs jar jars brute vat vats pail pails carboy dispenser pitcher`,
  stock: `stock solution solutions concentrate jug part two-part mixture dissolved`,
  tank: `tank tanks system systems display dt cube nano reef aquarium volume total net setup water gallons litres liters tanker
    tankful lagoon pico`,
  sump: `sump sumps refugium fuge overflow frag qt quarantine hospital`,
  evaporation: `evaporates evaporate evaporation evap evaporated evaporating topoff top-off ato top topped topping topup`,
  fresh: `fresh new mix mixed salt saltwater batch newly source tap rodi ro rodi di nsw standard fluid calibration bucket`,
  lamp: `light lights lamp lamps led leds par bulb bulbs tube tubes fixture channel blues whites blue white intensity
    brightness percent dim dimmed ramp photoperiod schedule`,
  place: `sand sandbed rock rockwork top bottom middle deep depth high low shelf rack glass wall left right back front corner
    under over above below height tall wide long`,
  person: `my son daughter wife husband kid kids child boy girl mom mum dad grandma grandpa brother sister friend mate
    neighbour neighbor roommate toddler baby partner`,
  money: `cost costs price priced paid pay sell selling sold worth asking buy bought`,
  away: `away gone trip holiday vacation leaving leave travel travelling weekend back`,
  remind: `remind reminder reminders ping nudge alert wake tell`,
  keep: `log keep save store record write note down jot track put remember`,
} as const;
