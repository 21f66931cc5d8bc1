/** The local server behind the page: its gates, its rigs on disk, its runs. It says nothing that the other verbs do not. */
package stokewell.web;
