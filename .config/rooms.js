import { posix } from 'node:path';
import { parseSync } from 'vite';

/**
 * @typedef {object} Room
 * @property {string} name
 * @property {string[]} holds     a folder (ends in '/') or one file; the longest match decides
 * @property {string[]} may       what its files may import; their own room is always lawful
 * @property {string[]} [types]   what they may import for types only
 * @property {string[]} packages  package names; 'node:' stands for all of Node's own
 *
 * @typedef {object} Ban
 * @property {string[]} in
 * @property {string[]} except
 * @property {string[]} [globals]  free names, or one member as in 'Math.random'
 * @property {string[]} [words]    names in any position: variable, property, attribute
 * @property {string} because
 *
 * @typedef {{ rooms: Room[], bans: Ban[] }} RoomTable
 * @typedef {{ file: string, line: number, message: string }} Problem
 * @typedef {{ specifier: string | null, typeOnly: boolean, at: number }} Import
 * @typedef {{ type: string, start: number } & Record<string, any>} Node
 */

/**
 * Which imports and names break the room table.
 *
 * @param {Iterable<readonly [string, string]>} files  path from the top folder (with '/') and text
 * @param {RoomTable} table
 * @returns {Problem[]}  in the order of the files; empty when all is lawful. A file that does not
 *   parse or stands in no room is a problem as well.
 */
export function checkRooms(files, table) {
  return [...files].flatMap(([file, source]) => checkFile(file, source, table));
}

/**
 * @param {string} file
 * @param {string} source
 * @param {RoomTable} table
 * @returns {Problem[]}
 */
function checkFile(file, source, table) {
  /** @type {(at: number, message: string) => Problem} */
  const problem = (at, message) => ({
    file,
    line: source.slice(0, at).split('\n').length,
    message,
  });
  const room = roomOf(file, table);
  if (!room) return [problem(0, 'stands in no room of .config/rooms.json')];
  const parsed = parseSync(file, source);
  const wrong = parsed.errors[0];
  if (wrong) return [problem(0, `does not parse: ${wrong.message}`)];
  const program = /** @type {Node} */ (/** @type {unknown} */ (parsed.program));

  const unlawful = importsOf(program).flatMap((found) => {
    const message = judge(file, room, found, table);
    return message ? [problem(found.at, message)] : [];
  });
  const banned = table.bans
    .filter((ban) => isAmong(file, ban.in) && !isAmong(file, ban.except))
    .flatMap((ban) =>
      namesOf(program, ban).map(({ name, at }) => problem(at, `${name}: ${ban.because}`)),
    );
  return [...unlawful, ...banned];
}

/**
 * @param {string} file
 * @param {RoomTable} table
 */
function roomOf(file, table) {
  const matches = table.rooms.flatMap((room) =>
    room.holds.filter((place) => isIn(file, place)).map((place) => ({ room, place })),
  );
  return matches.toSorted((a, b) => b.place.length - a.place.length)[0]?.room;
}

/**
 * @param {string} file
 * @param {string} place
 */
function isIn(file, place) {
  if (place.endsWith('/')) return file.startsWith(place);
  const bare = (/** @type {string} */ path) => path.replace(/\.[cm]?[jt]sx?$/, '');
  return bare(file) === bare(place);
}

/**
 * @param {string} file
 * @param {string[]} places
 */
const isAmong = (file, places) => places.some((place) => isIn(file, place));

/**
 * @param {string} file
 * @param {Room} room
 * @param {Import} found
 * @param {RoomTable} table
 * @returns {string | null}
 */
function judge(file, room, { specifier, typeOnly }, table) {
  if (specifier === null)
    return room.name === 'launch' ? null : 'imports something that is only known at run time';
  const path = specifier.replace(/[?#].*$/, '');
  if (!path.startsWith('.')) {
    const name = path.startsWith('node:')
      ? 'node:'
      : path
          .split('/')
          .slice(0, path.startsWith('@') ? 2 : 1)
          .join('/');
    return room.packages.includes(name) ? null : `${room.name} may not use the package ${path}`;
  }
  const target = posix.join(posix.dirname(file), path);
  if (target.endsWith('.css') && target.startsWith('app/')) return null;
  if (roomOf(target, table) === room || isAmong(target, room.may)) return null;
  if (isAmong(target, room.types ?? []))
    return typeOnly ? null : `${room.name} may import only types from ${target}`;
  return `${room.name} may not import ${target}`;
}

/**
 * Every way in which a file names another: import, export from, import(), require(), import types,
 * `new URL('./x', import.meta.url)` (how a worker is named) and import.meta.glob().
 *
 * @param {Node} program
 * @returns {Import[]}
 */
function importsOf(program) {
  /** @type {Import[]} */
  const found = [];
  walk(program, (node) => {
    /** @type {(source: Node | null | undefined, typeOnly?: boolean) => void} */
    const add = (source, typeOnly = false) =>
      void found.push({ specifier: textOf(source), typeOnly, at: node.start });
    switch (node.type) {
      case 'ImportDeclaration':
        return add(node['source'], node['importKind'] === 'type');
      case 'ExportNamedDeclaration':
      case 'ExportAllDeclaration':
        return node['source'] ? add(node['source'], node['exportKind'] === 'type') : undefined;
      case 'ImportExpression':
        return add(node['source']);
      case 'TSImportType':
        return add(node['source'] ?? node['argument']?.literal ?? node['argument'], true);
      case 'TSExternalModuleReference':
        return add(node['expression']);
      case 'CallExpression':
        if (node['callee'].type === 'Identifier' && node['callee'].name === 'require')
          return add(node['arguments'][0]);
        if (isImportMeta(node['callee'].object) && node['callee'].property?.name === 'glob')
          return add(node['arguments'][0]);
        return undefined;
      case 'NewExpression':
        if (node['callee'].name === 'URL' && isImportMeta(node['arguments'][1]?.object))
          return add(node['arguments'][0]);
        return undefined;
    }
  });
  return found;
}

/** @param {Node | undefined} node */
const isImportMeta = (node) => node?.type === 'MetaProperty' && node['meta'].name === 'import';

/**
 * @param {Node | null | undefined} node
 * @returns {string | null}
 */
function textOf(node) {
  if (node?.type === 'Literal' && typeof node['value'] === 'string') return node['value'];
  if (node?.type === 'TemplateLiteral' && node['quasis'].length === 1)
    return node['quasis'][0].value.cooked;
  return null;
}

/**
 * @param {Node} program
 * @param {Ban} ban
 * @returns {{ name: string, at: number }[]}
 */
function namesOf(program, ban) {
  const words = new Set(ban.words ?? []);
  const globals = new Set((ban.globals ?? []).filter((name) => !name.includes('.')));
  const members = (ban.globals ?? []).flatMap((name) => {
    const [object, member] = name.split('.');
    return object && member ? [{ name, object, member }] : [];
  });
  /** @type {{ name: string, at: number }[]} */
  const found = [];
  walk(program, (node, parent) => {
    const name = node.type === 'Literal' ? node['value'] : node['name'];
    if (typeof name !== 'string') return;
    if (words.has(name)) found.push({ name, at: node.start });
    if (node.type !== 'Identifier' || isLabelOnly(node, parent)) return;
    if (globals.has(name)) found.push({ name, at: node.start });
    // Taking the whole object (`const { random } = Math`) would hide the member from this check.
    for (const { name: full, object, member } of members)
      if (name === object && !isOtherMember(node, parent, member))
        found.push({ name: full, at: node.start });
  });
  // `{ Date }` holds its one name twice, as key and as value.
  return found.filter(
    ({ name, at }, index) =>
      found.findIndex((other) => other.name === name && other.at === at) === index,
  );
}

/**
 * True where an identifier only labels something: `x.Date`, `{ Date: 1 }`.
 *
 * @param {Node} node
 * @param {Node | null} parent
 */
function isLabelOnly(node, parent) {
  if (!parent || parent['computed']) return false;
  if (parent.type === 'MemberExpression') return parent['property'] === node;
  return parent['key'] === node && parent['value'] !== node && !parent['shorthand'];
}

/**
 * @param {Node} node
 * @param {Node | null} parent
 * @param {string} member
 */
function isOtherMember(node, parent, member) {
  if (parent?.type !== 'MemberExpression' || parent['object'] !== node) return false;
  const taken = parent['computed'] ? textOf(parent['property']) : parent['property'].name;
  return taken !== null && taken !== member;
}

/**
 * @param {unknown} node
 * @param {(node: Node, parent: Node | null) => void} visit
 * @param {Node | null} [parent]
 */
function walk(node, visit, parent = null) {
  if (Array.isArray(node)) {
    for (const item of node) walk(item, visit, parent);
    return;
  }
  if (typeof node !== 'object' || node === null) return;
  const here = 'type' in node ? /** @type {Node} */ (node) : null;
  if (here) visit(here, parent);
  for (const value of Object.values(node)) walk(value, visit, here ?? parent);
}
