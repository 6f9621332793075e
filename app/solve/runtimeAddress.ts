import address from 'highs/runtime?url';

/** Address of the solver's code in the built page: a file of our own, named by its content. */
export const runtimeAddress: string = address;
