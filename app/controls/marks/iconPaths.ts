/**
 * Our own icons: garden things in a 20 x 20 box, drawn with one pen (1.6 wide, round), never
 * filled. Each stands beside a word and says nothing the word does not.
 */
export const iconPaths = {
  /** a barrow, seen from the side */
  barrow:
    'M4.5 4 H18.5 L15 10 H8 Z M1 7 L8 10 L15 14.5 M7 9.6 L5.5 17 M15 11.5 A3 3 0 1 0 15 17.5 A3 3 0 1 0 15 11.5',
  /** a bed in its boards, two plants in it */
  bed: 'M2 12.5 V17.5 H18 V12.5 Z M6.5 12.5 V7 M6.5 9.5 C4.5 9.5 3.5 8.5 3.5 6.5 C5.5 6.5 6.5 7.5 6.5 9.5 M13.5 12.5 V4.5 M13.5 7.5 C15.5 7.5 16.5 6.5 16.5 4.5 C14.5 4.5 13.5 5.5 13.5 7.5 M13.5 10.5 C11.5 10.5 10.5 9.5 10.5 7.5 C12.5 7.5 13.5 8.5 13.5 10.5',
  /** a row that is further on from left to right */
  season:
    'M1.5 17.5 H18.5 M4 17.5 V14.5 M9 17.5 V10.5 M9 13 L6.8 11 M15 17.5 V4 M15 13 L12.3 10.5 M15 9.5 L17.6 7 M15 7.5 L12.6 5.2',
  /** long grass beside short */
  lawn: 'M1.5 17.5 H18.5 M3.5 17.5 C3.5 11 3 7 1.8 3.5 M6 17.5 C6 11 6.3 7.5 8 4 M8.8 17.5 C8.8 14 9.2 12 10.2 10 M12 17.5 V14 M14.5 17.5 V14 M17 17.5 V14',
  /** a seed packet, folded over at the top */
  packet:
    'M4 2.5 H16 V17.5 H4 Z M4 5.5 H16 M10 15 V11.5 M10 11.5 C7.5 11.5 6.5 10.3 6.5 8.3 C9 8.3 10 9.5 10 11.5 C10 9.5 11 8.3 13.5 8.3 C13.5 10.3 12.5 11.5 10 11.5',
  /** two plots with a path between, one sown */
  plots: 'M2 3 H8 V17 H2 Z M12 3 H18 V17 H12 Z M15 6.5 V6.6 M15 10 V10.1 M15 13.5 V13.6',
  /** the way in through the hedge */
  garden: 'M2.5 2.5 H17.5 V17.5 H12 M2.5 2.5 V17.5 H8 M8 17.5 V9.5 H12 V17.5 M5.5 6 H14.5',
  rake: 'M16.5 2 L8 11.5 M4 10 L10.5 16 M4 10 L2.3 11.9 M6.2 12 L4.5 13.9 M8.3 14 L6.6 15.9 M10.5 16 L8.8 17.9',
  spade: 'M14 2 L18 6 M16 4 L9.5 10.5 M7 8 L12 13 C11 16.5 7.5 17.5 2.5 17.5 C2.5 12.5 3.5 9 7 8 Z',
  fork: 'M10 2 V10.5 M7 2 H13 M5 17.5 V10.5 H15 V17.5 M10 10.5 V17.5',
  basket: 'M3 9 H17 L15 17.5 H5 Z M5.5 9 C5.5 1 14.5 1 14.5 9 M8 9 L8.8 17.5 M12 9 L11.2 17.5',
  /** a jar with soil in it, for the laboratory */
  jar: 'M6.5 2.5 H13.5 V5 H6.5 Z M7.5 5 C4.5 7 4.5 9 4.5 17.5 H15.5 C15.5 9 15.5 7 12.5 5 M4.7 11 H15.3',
  bucket: 'M3.5 7 H16.5 L15 17.5 H5 Z M4 7 C4 0.5 16 0.5 16 7',
  bag: 'M4.5 6.5 C2.5 11 2.5 15 3.5 17.5 H16.5 C17.5 15 17.5 11 15.5 6.5 Z M4.5 6.5 L3.5 3 L7.5 4.5 L10 2.5 L12.5 4.5 L16.5 3 L15.5 6.5',
  /** one blade of grass, cut across */
  blade:
    'M4 18 C4.5 11 7 6 12.5 2.5 L14.5 5 C10 8 8 12 7.5 18 M12 18 C12 15 12.7 12.5 14 10.5 L16.3 11.8 C15.3 13.5 15 15.5 15 18',
  leaf: 'M3 17 L8.5 11.5 M5.5 14.5 C2.5 8 7 3 17 3 C17 13 12 17.5 5.5 14.5 Z M8.5 11.5 H12 M8.5 11.5 V7.5',
  /** a tied sheaf */
  straw:
    'M6 2 C6.5 6 8.5 8.5 8.5 10 C8.5 12 6 14.5 5 18 M10 2 V18 M14 2 C13.5 6 11.5 8.5 11.5 10 C11.5 12 14 14.5 15 18 M7 10.2 H13',
  /** a heap that steams */
  heap: 'M1.5 17.5 C4 11.5 6.5 9 10 9 C13.5 9 16 11.5 18.5 17.5 Z M7 13.5 H10 M10.5 15.5 H13.5 M7.5 6 C6.5 5 8.5 4 7.5 2.5 M12.5 6 C11.5 5 13.5 4 12.5 2.5',
  can: 'M6.5 8.5 H14 V17.5 H6.5 Z M6.5 14 L2.5 7.5 M1 8.5 L4 6.5 M14 10 C18.5 10 18.5 15.5 14 15.5 M8 8.5 C8 4 13 4 13 8.5',
  sun: 'M10 6 A4 4 0 1 0 10 14 A4 4 0 1 0 10 6 M10 1.5 V3 M10 17 V18.5 M1.5 10 H3 M17 10 H18.5 M4 4 L5 5 M15 15 L16 16 M4 16 L5 15 M15 5 L16 4',
  rain: 'M5 10.5 C2 10.5 1.5 6.5 4.5 6 C5 2.5 10.5 2 11.5 5 C15.5 4 17.5 10 14 10.5 Z M6 13.5 L5 16.5 M10 13.5 L9 16.5 M14 13.5 L13 16.5',
  /** a hand lens, to find a word with */
  lens: 'M8.5 2.5 A6 6 0 1 0 8.5 14.5 A6 6 0 1 0 8.5 2.5 M13 13 L18 18',
  /** a furrow that turns back */
  back: 'M6.5 3.5 L2.5 7.5 L6.5 11.5 M2.5 7.5 H12.5 C19 7.5 19 16.5 12.5 16.5 H8',
  /** the same furrow the other way */
  again: 'M13.5 3.5 L17.5 7.5 L13.5 11.5 M17.5 7.5 H7.5 C1 7.5 1 16.5 7.5 16.5 H12',
  gate: 'M3 17.5 V4.5 M17 17.5 V4.5 M3 7.5 H17 M3 14.5 H17 M3 14.5 L17 7.5',
  paper: 'M4.5 2.5 H12 L15.5 6 V17.5 H4.5 Z M12 2.5 V6 H15.5 M7.5 10 H12.5 M7.5 13.5 H12.5',
  /** a weed, pulled out with its roots */
  pulled:
    'M10 4.5 V11.5 M10 8 C7.5 8 6 6.5 6 3.5 C8.5 3.5 10 5 10 8 C10 5 11.5 3.5 14 3.5 C14 6.5 12.5 8 10 8 M10 11.5 L7 14.5 M10 11.5 V15 M10 11.5 L13 14.5 M1.5 17.5 H6.5 M13.5 17.5 H18.5',
  close: 'M4.5 4.5 L15.5 15.5 M15.5 4.5 L4.5 15.5',
  add: 'M10 3.5 V16.5 M3.5 10 H16.5',
  down: 'M4.5 7.5 L10 13 L15.5 7.5',
  left: 'M12.5 4.5 L7 10 L12.5 15.5',
  right: 'M7.5 4.5 L13 10 L7.5 15.5',
} as const;

export type IconName = keyof typeof iconPaths;
