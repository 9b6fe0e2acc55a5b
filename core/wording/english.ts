import answer from './en/answer.json' with { type: 'json' };
import ask from './en/ask.json' with { type: 'json' };
import change from './en/change.json' with { type: 'json' };
import checkup from './en/checkup.json' with { type: 'json' };
import claim from './en/claim.json' with { type: 'json' };
import convert from './en/convert.json' with { type: 'json' };
import coral from './en/coral.json' with { type: 'json' };
import desk from './en/desk.json' with { type: 'json' };
import discord from './en/discord.json' with { type: 'json' };
import dose from './en/dose.json' with { type: 'json' };
import gear from './en/gear.json' with { type: 'json' };
import help from './en/help.json' with { type: 'json' };
import light from './en/light.json' with { type: 'json' };
import log from './en/log.json' with { type: 'json' };
import mydata from './en/mydata.json' with { type: 'json' };
import parse from './en/parse.json' with { type: 'json' };
import primer from './en/primer.json' with { type: 'json' };
import remind from './en/remind.json' with { type: 'json' };
import salinity from './en/salinity.json' with { type: 'json' };
import schedule from './en/schedule.json' with { type: 'json' };
import tank from './en/tank.json' with { type: 'json' };
import terminal from './en/terminal.json' with { type: 'json' };
import triage from './en/triage.json' with { type: 'json' };
import urgent from './en/urgent.json' with { type: 'json' };
import water from './en/water.json' with { type: 'json' };

/** The sentences of the interface itself in English: the ones every other language is complete against. */
export const english = {
  answer,
  ask,
  change,
  checkup,
  claim,
  convert,
  coral,
  desk,
  discord,
  dose,
  gear,
  help,
  light,
  log,
  mydata,
  parse,
  primer,
  remind,
  salinity,
  schedule,
  tank,
  terminal,
  triage,
  urgent,
  water,
};
