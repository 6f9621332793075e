/** Things stuff is carried in that a garden may not have described yet: asked for, never guessed. */
export const genericContainers: ReadonlySet<string> = new Set(
  [
    'bag|sack|bucket|pail|barrow|wheelbarrow|box|bin|basket|trug|tub|crate|can|butt|tarp|sheet',
    'load|barrowload|bagful|bucketful|trailer|truckload|truck|pickup|cart|bale|boxful|hopper',
    'catcher|grassbox|scoop|shovelful|forkful|armful|bucketload|trolley|drum|pot|jug|jar',
  ]
    .flatMap((list) => list.split('|'))
    .flatMap((name) => [name, `${name}s`, `${name}es`]),
);
