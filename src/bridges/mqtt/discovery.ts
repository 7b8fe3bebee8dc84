/**
 * How a home server finds the bridge on the bus: one kept message that lists what can be said,
 * shown and heard there. The form is the widespread device discovery of home automation over MQTT.
 */
import { announcementKinds } from '../../kitchen/facts.ts';

export interface DiscoveryOptions {
  /** Topic under which the home server looks. */
  prefix: string;
  base: string;
  /** The same in every run of one household. */
  instance: string;
  version: string;
}

/** A state of the home server holds so many characters. */
const stateCharacters = 255;

export function discoveryOf(options: DiscoveryOptions): { topic: string; payload: string } {
  const { prefix, base, instance, version } = options;
  const id = `roastcall_${instance}`;
  const entity = (name: string, platform: string, more: object): object => ({
    platform,
    unique_id: `${id}_${name}`,
    ...more,
  });
  const text = (name: string, title: string, key: string): object =>
    entity(name, 'sensor', {
      name: title,
      value_template: `{{ (value_json.${key} or '')[:${stateCharacters}] }}`,
    });
  const figure = (name: string, title: string, key: string, more: object): object =>
    entity(name, 'sensor', { name: title, value_template: `{{ value_json.${key} }}`, ...more });
  const celsius = {
    device_class: 'temperature',
    unit_of_measurement: '°C',
    state_class: 'measurement',
  };
  const payload = {
    device: { identifiers: [id], name: 'Roastcall', sw_version: version },
    origin: { name: 'roastcall', sw_version: version },
    availability_topic: `${base}/status`,
    state_topic: `${base}/state`,
    qos: 1,
    components: {
      say: entity('say', 'text', {
        name: 'Say',
        command_topic: `${base}/say`,
        value_template: `{{ (value_json.heard or '')[:${stateCharacters}] }}`,
        max: stateCharacters,
      }),
      tell: entity('tell', 'notify', { name: 'Tell', command_topic: `${base}/say` }),
      reply: text('reply', 'Last reply', 'reply'),
      stage: text('stage', 'Stage', 'stage'),
      next: text('next', 'Next step', 'nextStep'),
      asking: text('asking', 'Asking', 'asking'),
      core: figure('core', 'Core temperature', 'coreCelsius', celsius),
      pull: figure('pull', 'Pull temperature', 'pullCelsius', celsius),
      oven: figure('oven', 'Oven setting', 'ovenCelsius', celsius),
      table: figure('table', 'Minutes to table', 'minutesToTable', {
        device_class: 'duration',
        unit_of_measurement: 'min',
      }),
      ready: figure('ready', 'Ready at', 'readyAt', { device_class: 'timestamp' }),
      calls: entity('calls', 'event', {
        name: 'Call',
        state_topic: `${base}/announce`,
        event_types: [...announcementKinds],
        value_template:
          "{{ {'event_type': value_json.kind, 'text': value_json.text, 'urgency': value_json.urgency} | to_json }}",
      }),
    },
  };
  return { topic: `${prefix}/device/${id}/config`, payload: JSON.stringify(payload) };
}
