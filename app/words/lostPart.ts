/** Something that belongs to the program could not be fetched; the garden has nothing to do with it. */
export const lostPartSentence =
  'This part of the program could not be read from the disk. What you typed is safe. Try again; if it stays away, close the window and start Mowings anew.';
