import { checkCommand, checkCommandList, checkScope } from '../check-command.ts';
import { type Json, list, record } from '../json.ts';
import { applicationId, guildId } from '../world.ts';
import { bodyOf, type Call, checked, nothing, ok, param, refuse, type Reply, type Route } from './route.ts';

type Handler = (call: Call, scope: string) => Reply;

function commandsOf(call: Call, scope: string): readonly Json[] {
  return call.state.commands.get(scope) ?? [];
}

function complete(call: Call, scope: string, body: Json, before: Json | undefined): Json {
  return {
    id: before?.['id'] ?? call.state.nextId(),
    application_id: applicationId,
    ...(scope === 'global' ? {} : { guild_id: scope }),
    type: 1,
    description: '',
    default_member_permissions: null,
    nsfw: false,
    dm_permission: true,
    contexts: null,
    integration_types: [0],
    name_localizations: null,
    description_localizations: null,
    ...body,
    version: call.state.nextId(),
  };
}

function same(one: Json, other: Json): boolean {
  return one['name'] === other['name'] && (one['type'] ?? 1) === (other['type'] ?? 1);
}

const replaceAll: Handler = (call, scope) => {
  const refused = checked(call, (here) => checkCommandList(here, call.body));
  if (refused) return refused;
  const before = commandsOf(call, scope);
  const after = list(call.body)
    .map(record)
    .map((body) =>
      complete(
        call,
        scope,
        body,
        before.find((each) => same(each, body)),
      ),
    );
  call.state.commands.set(scope, after);
  return ok(after);
};

const create: Handler = (call, scope) => {
  const body = bodyOf(call);
  const before = commandsOf(call, scope);
  const others = before.filter((each) => !same(each, body));
  const refused = checked(call, (here) => {
    checkCommand(here, call.body);
    checkScope(here, [...others, body]);
  });
  if (refused) return refused;
  const old = before.find((each) => same(each, body));
  const made = complete(call, scope, body, old);
  call.state.commands.set(scope, [...others, made]);
  return { status: old ? 200 : 201, body: made };
};

/** Runs `act` with the command the address names. */
function onOne(act: (call: Call, scope: string, found: Json, others: readonly Json[]) => Reply): Handler {
  return (call, scope) => {
    const all = commandsOf(call, scope);
    const found = all.find((each) => each['id'] === param(call, 'command'));
    if (!found) return refuse(404, 10063, 'Unknown application command');
    return act(
      call,
      scope,
      found,
      all.filter((each) => each !== found),
    );
  };
}

const change = onOne((call, scope, found, others) => {
  const merged = { ...found, ...bodyOf(call) };
  const refused = checked(call, (here) => {
    checkCommand(here, merged);
    checkScope(here, [...others, merged]);
  });
  if (refused) return refused;
  const made = complete(call, scope, merged, found);
  call.state.commands.set(scope, [...others, made]);
  return ok(made);
});

const remove = onOne((call, scope, _found, others) => {
  call.state.commands.set(scope, others);
  return nothing;
});

const handlers: readonly (readonly [string, string, Handler])[] = [
  ['GET', '', (call, scope) => ok(commandsOf(call, scope))],
  ['PUT', '', replaceAll],
  ['POST', '', create],
  ['GET', '/:command', onOne((_call, _scope, found) => ok(found))],
  ['PATCH', '/:command', change],
  ['DELETE', '/:command', remove],
];

/** Application commands, global and of one guild. */
export const commandRoutes: readonly Route[] = handlers.flatMap(([method, rest, handler]) => [
  {
    method,
    pattern: `/applications/:app/commands${rest}`,
    handle: (call) => inScope(call, 'global', handler),
  },
  {
    method,
    pattern: `/applications/:app/guilds/:guild/commands${rest}`,
    handle: (call) => inScope(call, param(call, 'guild'), handler),
  },
]);

function inScope(call: Call, scope: string, handler: Handler): Reply {
  if (param(call, 'app') !== applicationId) return refuse(403, 20012, 'You are not authorized');
  if (scope !== 'global' && scope !== guildId) return refuse(403, 50001, 'Missing Access');
  return handler(call, scope);
}
