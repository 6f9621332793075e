import text from '../../assets/gardens/sample.mowings?raw';

/** Text of the sample garden's file, which comes with the program. */
export const sampleText: string = text;
