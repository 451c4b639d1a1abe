/** The scenario's keys and tables as declarations that reader, writer, schema and page all follow. */
package slackwater.scenario.format;
