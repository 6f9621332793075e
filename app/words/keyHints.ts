/** How one gets from figure to figure where many stand together, for who works by keys. */
export const figuresHint =
  'Arrow keys lead to the other figures here, Enter to where one comes from.';
