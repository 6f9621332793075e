/** What stands behind what a lawn should give to be mown, in words. */
export const lawnReadyWhyTexts = {
  ready: 'What should stand there to be mown.',
  readyFormula:
    'A year’s growth of its kind, spread over the days by warmth and water, since it was mown last × what its own mowings showed.',
  fresh: 'Weighs, fresh',
  times: 'Times what its kind usually gives',
  mowings: 'Mowings it was learnt from',
  yearly: 'A year’s growth of its kind, dry',
  warmth: 'It grows fastest at',
  scatter: 'One mowing may be off by',
  drought: 'Water the grass got.',
  droughtFormula: 'Rain and watering of two weeks ÷ what the grass would have used.',
  droughtRow: 'Clippings count as lean under',
  unlogged: 'Growth past which it was mown and not logged',
  since: 'Days since it was mown, where nobody logged it',
} as const;
