/** Light or dark as the window wears it is what the machine keeps. */
export { colourSchemes, type ColourScheme } from '../host/contract';
