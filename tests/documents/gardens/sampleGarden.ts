import type { Garden } from '../../../app/document/schema';
import { emptyGarden, newYorkDays } from './parts';
import { sampleBeds, sampleEvents, samplePlantings } from './sampleBeds';
import { bagId, sampleApplications, sampleMowings, sampleStock } from './sampleMowings';

export const sampleToday = '2013-06-15';

/** The invented garden that comes with the program, on the real weather of New York. */
export const sampleGarden = (): Garden => ({
  ...emptyGarden(
    {
      name: 'Sorrel Lane',
      isSample: true,
      place: 'New York (the garden is invented, the weather is real)',
      today: sampleToday,
      dogs: true,
      note: 'Nobody gardens here: people, beds and layers are made up; weather and tables are not. Two butts hold 400 L. A path runs from the gate past all the beds.',
    },
    { bundledRecord: 'new-york', days: newYorkDays('2012-01-01', sampleToday) },
  ),
  lawns: [
    {
      id: 'lawn-back',
      name: 'Back lawn',
      areaM2: 220,
      grass: 'cool',
      kind: 'ordinary',
      creepingGrass: false,
      seedHeadsSeen: '2013-05-04',
      fouledByPets: false,
      treatment: { answer: 'nothing' },
      note: 'Some clover. Not fed since 2011. Mown weekly.',
    },
    {
      id: 'lawn-front',
      name: 'Front lawn',
      areaM2: 90,
      grass: 'cool',
      kind: 'fed',
      creepingGrass: false,
      seedHeadsSeen: null,
      fouledByPets: false,
      treatment: {
        answer: 'treated',
        product: 'granules that feed and kill weeds, put down by a firm',
        date: '2013-05-04',
        label: 'forbids',
        labelWords: 'keep clippings off beds and out of compost until next year',
      },
      note: 'Clippings are left lying.',
    },
  ],
  containers: [
    {
      id: bagId,
      name: 'bag',
      plural: 'bags',
      litres: 45,
      weighed: { date: '2013-04-27', kilograms: 11.3, wetness: 'dry' },
    },
    { id: 'container-bucket', name: 'bucket', plural: 'buckets', litres: 10, weighed: null },
    { id: 'container-barrow', name: 'barrow', plural: 'barrows', litres: 85, weighed: null },
  ],
  stock: [...sampleStock],
  beds: [...sampleBeds],
  plantings: [...samplePlantings],
  mowings: [...sampleMowings],
  applications: [...sampleApplications],
  events: [...sampleEvents],
});
