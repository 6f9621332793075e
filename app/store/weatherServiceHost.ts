/** Who is asked for weather: what the window shows is what the machine asks. */
export { weatherServiceHost } from '../host/contract';
