/**
 * Does something once all that is to be shown now has been drawn: a new place stands, is scrolled to
 * its top and read out from its heading.
 *
 * @returns calls it off
 */
export function afterNextDrawing(run: () => void): () => void {
  let frame = requestAnimationFrame(() => {
    frame = requestAnimationFrame(run);
  });
  return () => cancelAnimationFrame(frame);
}
