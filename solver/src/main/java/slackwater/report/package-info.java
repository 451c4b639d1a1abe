/** The result for people and for other programs: page, tables, pictures and fields. */
package slackwater.report;
